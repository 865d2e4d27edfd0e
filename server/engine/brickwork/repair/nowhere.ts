/** A repair in a wall or pier that nothing of the job is called: all of it hangs on what stands there. */
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts } from '../../resolve/env';
import { type Gap, withGaps } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import { hasPier } from '../../workspace/stands';
import type { Needs } from '../needs';
import type { Work } from '../work';

/** That its name is not known is told where it stands. */
export function placeGaps(facts: BlockFacts, block: SourceBlock | undefined): readonly Gap[] {
  const line = facts.line('in');
  const [wall, pier] = [line?.word('wall'), line?.word('pier')];
  if (!line || !wall) return [];
  const named = facts.name || phrase`this repair`;
  const gap = (key: 'wall' | 'pier'): Gap[] => [
    {
      what:
        key === 'wall'
          ? phrase`the wall that ${named} is in is not known`
          : phrase`the pier that ${named} is in is not known`,
      origin: line.at(key),
      told: true,
    },
  ];
  if (!block) return gap('wall');
  return pier && !hasPier(block, pier) ? gap('pier') : [];
}

/** The same work, none of it complete. */
export function lacking(work: Work, gaps: readonly Gap[]): Work {
  if (!gaps.length) return work;
  const figures = work.figures.map((f) => ({ ...f, term: withGaps(f.term, gaps) }));
  return { ...work, figures, needs: needsLacking(work.needs, gaps) };
}

function needsLacking(needs: Needs, gaps: readonly Gap[]): Needs {
  const { waste } = needs;
  return {
    ...needs,
    bricks: needs.bricks.map((n) => ({ ...n, bricks: withGaps(n.bricks, gaps) })),
    mixes: needs.mixes.map((n) => ({ ...n, litres: withGaps(n.litres, gaps) })),
    pieces: needs.pieces.map((n) => ({ ...n, count: withGaps(n.count, gaps) })),
    tasks: needs.tasks.map((n) => ({ ...n, hours: withGaps(n.hours, gaps) })),
    ...(waste
      ? { waste: { volume: withGaps(waste.volume, gaps), mass: withGaps(waste.mass, gaps) } }
      : {}),
  };
}
