/** A bond that does not bond as it is written: found by laying it as sample walls and proving each. */
import { phrase } from '../../../../shared/phrase';
import { bondOf } from '../../brickwork/wall/bond';
import { BlockFacts, type Env } from '../../resolve/env';
import type { BondProof, LayoutFault } from '../../setting-out';
import type { Origin } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import { nameOrigin, type Remark } from '../remark';
import { inBricks, mendedBy, saidOf } from './said';
import { isSound, proofOf, type Trial, trialsOf } from './trials';
import { lineOf, waysOf } from './ways';

const known = new WeakMap<SourceBlock, readonly Remark[]>();

/** What is wrong with a bond block of the file itself. It hangs on nothing else, so that it is kept with the block. */
export function bondUnsound(block: SourceBlock, env: Env): readonly Remark[] {
  if (block.kind !== 'bond') return [];
  const before = known.get(block);
  if (before) return before;
  const remarks = remarksOf(block, env);
  known.set(block, remarks);
  return remarks;
}

function remarksOf(block: SourceBlock, env: Env): Remark[] {
  const facts = block.read.heading && new BlockFacts(block, block.read.heading, env);
  if (!facts) return [];
  for (const tried of trialsOf(facts)) {
    const proof = proofOf(facts, tried);
    if (proof && !isSound(proof)) return [remarkOf(facts, tried, proof)];
  }
  return [];
}

function remarkOf(facts: BlockFacts, trial: Trial, proof: BondProof): Remark {
  const { thickness, n } = trial;
  const { pattern, lengths, tried } = proof;
  const [first] = pattern;
  const fault = first ?? lengths[0]!.fault;
  const where = first
    ? phrase`Wherever the pattern runs`
    : phrase`Between two free ends, at ${lengths.length} of ${tried} lengths from 1 to 12 bricks (the shortest ${inBricks(lengths[0]!.halves)})`;
  const { courses } = bondOf(facts, n, thickness)!;
  const cycle = courses.length;
  const asked = n === undefined ? '' : phrase`, where a wall asks for ${facts.name} ${n}`;
  const message = phrase`${facts.title} does not bond as it is written${asked}. ${where}, ${saidOf(fault, cycle)} ${mendedBy(fault)}`;
  return {
    code: 'bond-unsound',
    severity: 'warning',
    origin: placeOf(facts, trial, fault, cycle),
    message,
    ways: () => (fault.kind === 'untied' ? [] : waysOf(facts, trial, fault.course % cycle)),
  };
}

/** Its line where one course is at fault, and the bond by its name where all of them are. */
function placeOf(facts: BlockFacts, trial: Trial, fault: LayoutFault, cycle: number): Origin {
  const line = fault.kind === 'untied' ? undefined : lineOf(facts, trial, fault.course % cycle);
  return line?.origin ?? nameOrigin(facts.block);
}
