/// <reference types="astro/client" />

declare module 'virtual:oilway/chapters' {
  /** The MDX of each chapter that this run may show, by chapter id. */
  export const chapters: Record<string, () => Promise<{ default: import('astro/runtime/server/index.js').AstroComponentFactory }>>;
}

declare namespace App {
  interface Locals {
    /** The chapter whose page is being drawn: its components find their numbers in it. */
    chapter?: import('./record/types.ts').Chapter;
  }
}
