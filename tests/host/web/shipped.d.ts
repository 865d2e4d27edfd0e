declare module 'shipped' {
  /** Of `dist/web/client.js`. */
  export function activate(context: import('vscode').ExtensionContext): Promise<void>;
}
