/** What the page hands to the components of a chapter, and the module that lists the chapters which this run may show. */
declare namespace App {
  interface Locals {
    /** The chapter being drawn; absent on every other page. */
    chapter?: import('../record/types.ts').Chapter;
    /** Sums drawn on this page so far. */
    sumsDrawn?: number;
  }
}

declare module 'virtual:oilway/chapters' {
  /** By chapter id; a held chapter is missing from it in a build. */
  export const chapters: Readonly<
    Record<string, () => Promise<{ default: import('astro').MDXInstance<object>['default'] }>>
  >;
}
