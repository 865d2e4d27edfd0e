/** A file in the notation, imported as its text: the bundler and the test runner both put it in. */
declare module '*.perp' {
  const text: string;
  export default text;
}
