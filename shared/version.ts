/** The version of the tool. A test holds it to the one in package.json, which a bundle cannot import. */
export const VERSION = '0.1.0';
