/** Places of a sheet by their names. */
export const partOf = (sheet: HTMLElement, name: string): HTMLElement =>
  sheet.querySelector(`[data-part="${name}"]`) as HTMLElement;

export const tell = (sheet: HTMLElement, text: string): void => {
  partOf(sheet, 'told').textContent = text;
};
