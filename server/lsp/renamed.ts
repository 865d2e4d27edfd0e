/** Which renames of files the editor tells of before they are done. */
import type { FileOperationRegistrationOptions } from 'vscode-languageserver';

/** What is renamed that a line may name, and folders that may hold it. */
export const RENAMED: FileOperationRegistrationOptions = {
  filters: [
    { pattern: { glob: '**/*.perp', matches: 'file', options: { ignoreCase: true } } },
    { pattern: { glob: '**/*.{png,jpg,jpeg}', matches: 'file', options: { ignoreCase: true } } },
    { pattern: { glob: '**/*', matches: 'folder' } },
  ],
};
