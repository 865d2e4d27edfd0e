/** A job without prices that uses no file, though the firm’s stands beside it: it was begun before there was one. */
import { phrase } from '../../../shared/phrase';
import { templateOf } from '../life/template';
import { firmPlace, usesFile } from '../life/template/firm';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { headOrigin, type Remark } from './remark';

/** @param home where what is told of the whole job stands */
export function firmUnused({ file, price, scope }: Job, home: SourceBlock): Remark[] {
  if (!price.total.gaps.length || usesFile(file) || templateOf(file)) return [];
  // Looked for last: it asks the disk.
  const way = scope.firmNear();
  if (way === undefined) return [];
  const line = `use ${JSON.stringify(way)}`;
  return [
    {
      code: 'use-firm',
      severity: 'warning',
      origin: headOrigin(home),
      message: phrase`The price is not complete, and this job uses no file, though “${way}” is there: its prices do not count here. Write in the job: ${line}`,
      ways: [{ title: phrase`Add “${line}”`, edits: [firmPlace(file, line)], preferred: true }],
    },
  ];
}
