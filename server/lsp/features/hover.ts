/** What stands under the pointer. */
import { hover } from '../../engine/ide/hover';
import * as from from '../from-proto';
import { linkerIn } from '../links';
import type { Parts } from '../parts';
import * as to from '../to-proto';

export function registerHover({ connection, answers, client, session }: Parts): void {
  connection.onHover(
    answers.quick((params, file) => {
      const { uriOf } = session();
      const link = linkerIn(file.uri, uriOf, client().commands);
      const found = hover(session().job(file), from.position(params.position), link);
      return found && to.hover(found);
    }),
  );
}
