/** A place in a recording. @example clock(751) // "12:31" ; clock(3905) // "1:05:05" */
export function clock(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor((seconds % 3600) / 60);
  const rest = two(Math.floor(seconds % 60));
  return hours > 0 ? `${hours}:${two(minutes)}:${rest}` : `${minutes}:${rest}`;
}
