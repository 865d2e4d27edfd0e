/** Each question of the editor, handed to the engine and its answer handed back: a feature a file. No rule of the trade is here. */
import type { Parts } from '../parts';
import { registerActions } from './actions';
import { registerCompletion } from './completion';
import { registerFileMoves } from './file-moves';
import { registerFormatting } from './formatting';
import { registerHover } from './hover';
import { registerLinks } from './links';
import { registerNames } from './names';
import { registerOutline } from './outline';
import { registerSearch } from './search';
import { registerSignature } from './signature';

export function registerFeatures(parts: Parts): void {
  registerHover(parts);
  registerCompletion(parts);
  registerSignature(parts);
  registerNames(parts);
  registerOutline(parts);
  registerSearch(parts);
  registerLinks(parts);
  registerFileMoves(parts);
  registerActions(parts);
  registerFormatting(parts);
}
