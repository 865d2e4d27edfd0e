/** Examples whose own texts are in another alphabet, so that what is said of them in plain letters is ours. */
import { shippedLibraries } from '../../server/engine/shipped';
import { Workspace } from '../../server/engine/workspace/workspace';
import { EXAMPLES } from '../engine/examples';
import { hostOf, inRoot } from '../engine/world';
import { wordsOutside } from './left';
import { veil } from './pseudo';

const LIBRARIES = Object.fromEntries(
  Object.entries(shippedLibraries((file) => `library:${file}`)).map(([name, { file, text }]) => [
    name,
    { file, text: veil(text) },
  ]),
);

export const FILES: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(EXAMPLES).map(([name, text]) => [name, veil(text)]),
);

/** Words that the files themselves hold outside their texts. */
export const OWN = wordsOutside(
  [...Object.values(FILES), ...Object.values(LIBRARIES).map((l) => l.text)].join('\n'),
);

export function veiledJob(name: string, text = FILES[name]!) {
  return new Workspace(hostOf({ ...FILES, [name]: text }), LIBRARIES).job(inRoot(name))!;
}
