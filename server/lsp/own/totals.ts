/** What a job comes to: its totals, its figures, and how each is worked out. */
import {
  FIGURES,
  type FigureItem,
  type FileParams,
  TOTALS,
  type Totals,
  WORKING,
  type Working,
  type WorkingParams,
} from '../../../shared/protocol';
import { totalsOf } from '../../engine/ide/totals';
import { figureItems, workingFor } from '../../engine/ide/working';
import type { Parts } from '../parts';
import { onFile } from './asked';

export function registerTotals(parts: Parts): void {
  const { session } = parts;
  onFile<FileParams, Totals>(parts, TOTALS, (_, file) => totalsOf(session().job(file)));
  onFile<FileParams, readonly FigureItem[]>(parts, FIGURES, (_, file) => {
    const job = session().job(file);
    return job.isJob ? figureItems(job) : [];
  });
  // Places in words: a page of Markdown opens no links to files.
  onFile<WorkingParams, Working>(parts, WORKING, ({ id }, file) =>
    workingFor(session().job(file), id),
  );
}
