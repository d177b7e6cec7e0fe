/** What a sheet tells; filled like every text with holes. */
export const TOLD = {
  impossible: 'These figures cannot be worked out together.',
  came: 'These figures came with the address.',
  unknown: 'The address also says {names}, which this sheet does not know; it was left out.',
  unread: 'Nothing was kept: some of these figures cannot be read yet.',
  kept: 'Kept on this device only, as your machine. Every calculator here can start from it.',
  unkept: 'This browser keeps nothing for this site, so the figures could not be kept.',
  copied: 'The address of this set-up is copied.',
  uncopied: 'This browser does not let a page copy. The address of this set-up is {address}',
  none: '(none kept)',
  some: '({count} kept)',
};
