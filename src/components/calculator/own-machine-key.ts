/** Where this device keeps the reader's own machine; one for a site. */
export const MACHINE_KEY = `own-machine${import.meta.env.BASE_URL}`;

/** Said on the document whenever the kept machine, or whether it is used, changes; every sheet of the page listens. */
export const CHANGED = 'own-machine';
