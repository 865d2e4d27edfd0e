/** A repair in the pier of a wall that has none of that name, though another wall has. */
import { phrase } from '../../../../shared/phrase';
import { wordOf } from '../../resolve/book';
import type { BlockFacts } from '../../resolve/env';
import { hasPier } from '../../workspace/stands';
import { type Remark, rewrite } from '../remark';

/** A name that no wall has is told of as such. */
export function pierElsewhere(facts: BlockFacts): Remark | undefined {
  const line = facts.line('in');
  const [wall, pier] = [line?.word('wall'), line?.word('pier')];
  if (!line || !wall || !pier) return undefined;
  const walls = facts.block.file.blocks.filter((b) => hasPier(b, pier));
  const names = walls.map((b) => wordOf(b.read.heading?.values.name));
  if (!names.length || names.includes(wall)) return undefined;
  const message = phrase`The wall ${wall} has no pier ${pier}: that is a pier of ${names[0]}. What is mended there is not counted.`;
  const ways = [{ title: phrase`In ${names[0]}`, edits: [rewrite(line.at('wall'), names[0]!)] }];
  return {
    code: 'pier-elsewhere',
    severity: 'error',
    origin: line.at('pier'),
    message,
    leavesOut: phrase`what is mended of the pier ${pier}`,
    ways,
  };
}
