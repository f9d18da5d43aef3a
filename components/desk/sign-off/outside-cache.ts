/** The one cache of the service worker: the shell that opens outside, and its files; nobody's data. */
export const outsideCache = 'duskbench-outside';
