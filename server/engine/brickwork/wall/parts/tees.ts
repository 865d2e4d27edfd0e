/** Walls that run into the face of another: the ties they take, and what is said of them. */

import { phrase } from '../../../../../shared/phrase';
import { teePlace, teeTwice, teeUnbonded } from '../../../findings/junctions/tee-place';
import type { Remark } from '../../../findings/remark';
import { defaultLine, factsOf } from '../../../resolve/env';
import type { Masonry } from '../../masonry';
import type { PieceNeed } from '../../needs';
import { saidFrom } from '../../said';
import type { WallJoin } from '../../work';
import type { Tee } from '../meet/tees';
import { tieTerm } from '../meet/ties';
import { hasBacking } from '../meet/unbonded';
import type { WallPlan } from '../spec';
import type { Part, PartOf } from './part';

export const tees: PartOf = (masonry, plan, { tees: all }): Part | undefined => {
  if (!all.length) return undefined;
  const stand = all.filter((t) => !t.off);
  return {
    remarks: all.flatMap(remarkOn),
    pieces: tiesInto(
      stand.filter((t) => !t.bonded),
      masonry,
      plan,
    ),
    says: stand.flatMap((t) => saidFrom([said(t, masonry)], t.line)),
    facts: { tees: stand.map((t) => joinOf(t)) },
  };
};

function remarkOn({ line, side, other, off, twice, unbonded, elsewhere }: Tee): Remark[] {
  if (off && twice) return [teeTwice(line, side, other, off)];
  if (off) return [teePlace(line, side, other, off)];
  return unbonded ? [teeUnbonded(line, side, other, unbonded, elsewhere)] : [];
}

function tiesInto(tied: readonly Tee[], { env }: Masonry, plan: WallPlan): PieceNeed[] {
  const line = defaultLine(env, 'tee-ties');
  if (!line || !tied.length) return [];
  const courses = tied.map(({ levels: { courses: c } }) => Math.max(0, c.to - c.from));
  const count = tieTerm(phrase`Ties into walls that it meets`, line, plan, courses);
  return [{ material: line.word('material'), count, origin: line.at('material') }];
}

function said({ other, bonded }: Tee, { env }: Masonry): string {
  const title = factsOf(other, env)!.title.replaceAll('-', ' ');
  if (bonded) return phrase`Bond it into the face of ${title}.`;
  return phrase`Tie it into the ${hasBacking(other, env) ? phrase`backing` : phrase`face`} of ${title}.`;
}

function joinOf({ side, other, distance, levels, with: { out } }: Tee): WallJoin {
  return {
    kind: 'tee',
    side,
    wall: other.name ?? '',
    distance,
    ground: levels.ground,
    otherGround: levels.otherGround,
    thickness: out.thickness,
    inside: false,
  };
}
