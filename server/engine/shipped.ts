/** The library files that ship with the tool, as the bundler puts them in: nothing is read at run time. */
import de from '../library/de.perp';
import uk from '../library/uk.perp';
import us from '../library/us.perp';
import world from '../library/world.perp';
import type { Library } from './workspace/workspace';

const TEXTS: Readonly<Record<string, string>> = { uk, us, de, world };

/**
 * @param nameOf what the host calls the file of a library, such as a path under which an editor can open it
 * @returns the libraries by the names that `use` takes
 */
export function shippedLibraries(
  nameOf: (file: string) => string,
): Readonly<Record<string, Library>> {
  return Object.fromEntries(
    Object.entries(TEXTS).map(([name, text]) => [name, { file: nameOf(`${name}.perp`), text }]),
  );
}
