/** Where a text stands for what it names beside it: one that is not saved, or of another day, stands among the files of today. */
import { type Address, addressOf, wayBetween, wayDown } from './uri-names';

/** Of texts that no file system of their own holds, whatever their path says. */
const HOMELESS = /^(untitled|git|gitfs|output|vscode-.*-output|perpend-.*)$/;

/**
 * @param uri a text’s own address
 * @param folders those that are open in the editor
 * @returns nothing for a text that has no place among files
 */
export function placed(uri: string, folders: readonly Address[]): Address | undefined {
  const own = addressOf(uri);
  if (!own) return inFirst(folders);
  if (folders.some((folder) => wayBetween(folder, own))) return own;
  const folder = folders.find((each) => wayDown(each, own));
  if (folder) return { ...folder, parts: own.parts };
  return own.query || HOMELESS.test(own.scheme) ? undefined : own;
}

/** A new text without a path will most likely be saved in the folder that is open. */
function inFirst([folder]: readonly Address[]): Address | undefined {
  if (!folder) return undefined;
  const parts = folder.parts.filter((part) => part !== '');
  return { ...folder, parts: [...parts, 'untitled.perp'] };
}
