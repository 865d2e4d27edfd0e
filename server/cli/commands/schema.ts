/** perpend schema: the JSON Schema of what --json prints. */

import schema from '../../../shared/json-schema/perpend-1.schema.json';
import { later, phrase } from '../../../shared/phrase';
import type { Given } from '../args';
import { CLEAN, WrongUse } from '../exits';
import type { Io } from '../io';
import type { Command } from './command';

export const schemaCommand: Command = {
  name: 'schema',
  takes: '',
  about: later`print the JSON Schema of what --json prints`,
  more: [later`Within a version of the format things are only ever added.`],
  options: [],
  run(given: Given, io: Io): number {
    if (given.words.length) throw new WrongUse(phrase`perpend schema takes no file.`);
    io.raw(`${JSON.stringify(schema, undefined, 2)}\n`);
    return CLEAN;
  },
};
