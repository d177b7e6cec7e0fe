import type { Chapter } from '../../record/types.ts';

/** The chapter that a component stands in. Chapter components have no meaning on another page. */
export function chapterHere(locals: App.Locals, component: string): Chapter {
  if (locals.chapter === undefined) throw new Error(`<${component}> stands only in a chapter.`);
  return locals.chapter;
}
