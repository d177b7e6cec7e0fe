import { RULES } from './rules.ts';

/** docs/problems.md: what each rule of the check means. Written from the catalogue, and tested to be equal to it. */
export function rulesPage(): string {
  const blocks = [...RULES].map(
    ([id, { title, why, severity, fixture }]) =>
      `## ${title}\n\n\`${id}\`, ${severity === 'error' ? 'an error' : 'a warning'}. ${why} Example: \`tests/series/${fixture}/\`.\n`,
  );
  return `# Problems\n\nWhat the check can find. An error stops publishing; a warning is shown to you and published.\n\n${blocks.join('\n')}`;
}
