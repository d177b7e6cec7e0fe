/** The site's addresses, for pages and layouts; kept in components, which may not import from here. */
export { at, atChapter, atFault, atMachineValue, atPart, machineAnchor } from '../components/address.ts';
