/** Mending of standing work: taken down and built again, bricks cut out, joints raked and pointed, coping laid again. */
import { Decimal, exact } from '../../../shared/exact';
import { gaugeOff } from '../findings/gauge-off';
import type { Remark } from '../findings/remark';
import { type Gang, taskHours } from '../labour/gang';
import { type BlockFacts, type Env, factsNamed, type LineFacts } from '../resolve/env';
import { rowOf, setOut, sizeOf, tally, type WallSpec } from '../setting-out';
import {
  counted,
  difference,
  fact,
  type Gap,
  missing,
  most,
  named,
  product,
  quotient,
  share,
  sum,
  type Term,
  up,
  withGaps,
} from '../working/term';
import { type Counted, countBricks, mortarOf } from './count';
import { type Brick, brickOf, mixOf } from './goods';
import { inMm, inUnit, unitNames } from './lengths';
import { halvesOf, jointsIn, limitsOf, type Masonry, withJoints } from './masonry';
import type { Figure, MixNeed, Needs, TaskNeed, Work } from './needs';
import { bondOf } from './wall/bond';
import { metres } from './wall/says';

/** `wall` is the wall that stands there, when the file has it. */
export function workRepair(
  facts: BlockFacts,
  env: Env,
  gang: Gang,
  wall: BlockFacts | undefined,
): Work {
  return new RepairWork(facts, env, gang, wall).done();
}

class RepairWork {
  private readonly remarks: Remark[] = [];
  private readonly figures: Figure[] = [];
  private readonly tasks: TaskNeed[] = [];
  private readonly mortar: Term[] = [];
  private readonly says: string[] = [];
  private readonly does = new Set<string>();
  /** Bricks that have to be there, and those that come back from what is taken down. */
  private readonly wanted: Term[] = [];
  private readonly down: Term[] = [];
  private reused: Term | undefined;
  private readonly masonry: Masonry;
  private readonly match: Brick;

  constructor(
    private readonly facts: BlockFacts,
    private readonly env: Env,
    private readonly gang: Gang,
    private readonly wall: BlockFacts | undefined,
  ) {
    const brick = brickOf(this.line('brick'), env, facts.origin);
    const mix = mixOf(this.line('mix'), env, facts.origin);
    this.masonry = withJoints(facts, env, brick, mix);
    const match = facts.line('match');
    this.match = match ? brickOf(match, env, match.origin) : brick;
  }

  /** The repair’s own line, else the wall’s, else the default. */
  private line(key: string): LineFacts | undefined {
    return this.facts.line(key) ?? this.wall?.line(key) ?? this.facts.orDefault(key);
  }

  done(): Work {
    this.rebuild();
    this.recope();
    this.salvage();
    this.cutOut();
    this.repoint();
    this.checkGauge();
    const needs = this.needs();
    const { facts } = this;
    const figures: Figure[] = [
      ...this.figures,
      {
        key: 'hours',
        term: sum(
          'Hours of the gang',
          'h',
          this.tasks.map((t) => t.hours),
        ),
      },
    ];
    return {
      block: facts.block,
      kind: 'repair',
      name: facts.name,
      title: facts.title,
      figures,
      needs,
      remarks: this.remarks,
      facts: { does: this.does, says: this.says },
      notes: facts.lines('note').map((n) => n.word('text')),
    };
  }

  private task(task: string, label: string, amount: Term): void {
    this.tasks.push({ task, hours: taskHours(task, label, amount, this.env, this.gang) });
  }

  private show(key: string, term: Term): void {
    this.figures.push({ key, term });
  }

  /** Taken down, cleaned, and built again. */
  private rebuild(): void {
    const line = this.facts.line('rebuild');
    if (!line) return;
    const laid = this.layRebuilt(line);
    const down = laid ? withGaps(laid.bricks, this.masonry.gaps) : this.notLaid(line);
    const bricks = { ...down, label: 'Bricks down' };
    this.show('down', bricks);
    this.down.push(bricks);
    this.wanted.push(named('to build again', bricks));
    if (laid)
      this.mortar.push(
        mortarOf('building again', [{ tally: laid.tally, brick: this.masonry.brick }], this.env),
      );
    this.task('take-down', 'Taking down', bricks);
    this.task('facework', 'Building again', bricks);
    this.does.add('taking-down');
    const length = line.number('length');
    if (length)
      this.says.push(
        `Take down ${metres(length, this.env)} of the wall and build it again, reusing the bricks that clean up.`,
      );
  }

  /** Whole bricks only: a part of a brick is not reused as one. */
  private salvage(): void {
    const line = this.facts.line('salvage');
    if (!line || !this.down.length) return;
    const down = sum('all that comes down', 'bricks', this.down);
    const part = share('Bricks that clean up', 'bricks', line.term('share', 'salvage', '%'), down);
    const whole = part.value.toDecimalPlaces(0, Decimal.ROUND_DOWN);
    const reused = counted('Bricks reused', whole, 'bricks', {
      args: [part],
      note: 'whole bricks',
    });
    this.reused = reused;
    this.show('reused', reused);
    this.task('clean', 'Cleaning bricks', reused);
  }

  /** The part that comes down is laid as the wall is: between toothed ends, in its bond. */
  private layRebuilt(line: LineFacts): Counted | undefined {
    const spec = this.rebuiltSpec(line);
    if (!spec) return undefined;
    const out = setOut(spec);
    const inputs = [line.term('length', 'length rebuilt')];
    return countBricks('Bricks down', [tally(out)], this.masonry, inputs);
  }

  /** No bricks, and why: what is not known of the brickwork itself comes first. */
  private notLaid(line: LineFacts): Term {
    const { gaps } = this.masonry;
    const why = [{ what: this.whyNotLaid(line), origin: line.origin }];
    return withGaps(fact('Bricks down', 0, 'bricks', line.origin), gaps.length ? gaps : why);
  }

  private whyNotLaid(line: LineFacts): string {
    const { name } = this.facts;
    const high = line.number('courses') ?? line.number('height');
    if (!line.number('length') || !high) return `how much of ${name} is rebuilt is not known`;
    if (!jointsIn(this.masonry)) return `the joints of ${name} are not known, or no joints at all`;
    return `the bond of ${name} is not known, or its thickness is not set out yet`;
  }

  private rebuiltSpec(line: LineFacts): WallSpec | undefined {
    const unit = this.masonry.brick.size;
    const joints = jointsIn(this.masonry);
    const length = line.number('length');
    const thick = this.line('thick')?.number('thick');
    const bondLine = this.line('bond');
    const bondFacts = bondLine && factsNamed(this.env, 'bond', bondLine.word('bond'));
    const bond = bondFacts && bondOf(bondFacts, bondLine.number('n'));
    const thickness = thick === undefined ? 0 : halvesOf(thick);
    if (!unit || !joints || !length || !bond || (thickness !== 1 && thickness !== 2))
      return undefined;
    const high = line.number('height');
    const courses =
      line.number('courses') ??
      (high === undefined ? 0 : Math.round(high / (unit.height + joints.bed)));
    if (courses < 1) return undefined;
    const limits = limitsOf(this.env, 'joints-accepted', this.masonry.jointTerms.perpend);
    const ends = { left: 'toothed', right: 'toothed' } as const;
    const row = rowOf(unit, joints.perpend, ends, limits);
    const halves = Math.round((2 * length) / (unit.length + joints.perpend));
    const halfBricks = Math.max(1, halves - runOn(bond.lap));
    return {
      unit,
      joints,
      bond,
      thickness,
      length: sizeOf(row, halfBricks),
      courses: Math.floor(courses),
      ...ends,
      openings: [],
      piers: [],
      limits,
    };
  }

  private cutOut(): void {
    const line = this.facts.line('cut-out');
    if (!line) return;
    const bricks = line.term('bricks', 'Bricks cut out', 'bricks');
    this.show('cut-out', bricks);
    this.wanted.push(bricks);
    this.mortar.push(this.jointsAround(bricks));
    this.task('cut-out', 'Cutting out and replacing bricks', bricks);
    this.does.add('raking');
    this.says.push('Cut out and replace single damaged bricks.');
  }

  /** A brick replaced is bedded on one bed and one upright joint, its own depth into the wall. */
  private jointsAround(bricks: Term): Term {
    const unit = this.masonry.brick.size;
    const joints = jointsIn(this.masonry);
    const name = unitNames(this.env).volume;
    if (!unit || !joints)
      return missing('around new bricks', name, 'the joints are not known', this.facts.origin);
    const each =
      (unit.length + joints.perpend) * joints.bed * unit.width +
      joints.perpend * unit.height * unit.width;
    const litres = counted('mortar around one', exact((each / 1e6).toFixed(6)), 'l', {
      note: 'one bed and one upright joint',
    });
    return product('around new bricks', name, [bricks, inUnit(litres, name)]);
  }

  /** Joints of the face, raked to a depth: the share of the face that is joint, times area, times depth. */
  private repoint(): void {
    const line = this.facts.line('repoint');
    if (!line) return;
    const area = line.term('area', 'Area repointed');
    this.show('repointed', area);
    this.mortar.push(this.pointing(area, line));
    this.task('repoint', 'Raking out and pointing', area);
    this.does.add('raking');
    this.says.push('Rake out perished joints and repoint them.');
  }

  private pointing(area: Term, line: LineFacts): Term {
    const unit = this.masonry.brick.size;
    const joints = jointsIn(this.masonry);
    const name = unitNames(this.env).volume;
    if (!unit || !joints) return missing('pointing', name, 'the joints are not known', line.origin);
    const depth = line.values.depth
      ? line.term('depth', 'raked')
      : missing('raked', 'mm', 'how deep the joints are raked is not known', line.origin);
    const module = (unit.length + joints.perpend) * (unit.height + joints.bed);
    const part = counted(
      'share of the face that is joint',
      exact((1 - (unit.length * unit.height) / module).toFixed(6)),
      '',
      { note: 'of a stretcher face' },
    );
    const metric = product('pointing', 'm3', [inUnit(area, 'm2'), part, inUnit(inMm(depth), 'm')]);
    return inUnit(metric, name);
  }

  private recope(): void {
    const line = this.facts.line('recope');
    if (!line) return;
    const length = inMm(line.term('length', 'Coping laid again'));
    const unit = this.masonry.brick.size;
    const joint = this.masonry.jointTerms.perpend;
    const each = unit
      ? sum('a brick on edge', 'mm', [
          fact('height of the brick', unit.height, 'mm', this.masonry.facts.origin),
          joint,
        ])
      : missing('a brick on edge', 'mm', 'the brick is not known', line.origin);
    const bricks = up(
      'Bricks on edge',
      'bricks',
      quotient('bricks on edge', 'bricks', length, each),
    );
    this.show('recoped', bricks);
    this.down.push(bricks);
    this.wanted.push(bricks);
    if (unit) {
      const bed =
        unit.length * unit.width * joint.value.toNumber() +
        unit.length * unit.height * joint.value.toNumber();
      const one = counted('mortar to one', exact((bed / 1e6).toFixed(6)), 'l', {
        note: 'one joint and its bed',
      });
      this.mortar.push(
        product('bricks on edge', unitNames(this.env).volume, [
          bricks,
          inUnit(one, unitNames(this.env).volume),
        ]),
      );
    }
    this.task('take-down', 'Taking off the coping', bricks);
    this.task('coping', 'Laying the coping again', bricks);
    this.says.push('Take off the coping and lay it again.');
  }

  /** The joint that a bought brick needs to keep the gauge of the standing work. */
  private checkGauge(): void {
    const line = this.line('gauge');
    const height = this.match.size?.height;
    if (!line || !height || !this.facts.line('gauge')) return;
    const course = quotient(
      'height of a course',
      'mm',
      inMm(line.term('height', 'height of the courses')),
      line.term('courses', 'courses'),
    );
    const joint = difference(
      'Bed joint the new brick needs',
      'mm',
      course,
      fact('height of the brick', height, 'mm', this.match.facts?.line('size')?.at('size')),
    );
    this.show('joint-needed', joint);
    const limits = limitsOf(this.env, 'beds-accepted', this.masonry.jointTerms.perpend);
    const remark = gaugeOff(line, joint, this.match, limits, this.env);
    if (remark) this.remarks.push(remark);
  }

  private needs(): Needs {
    const wanted = sum('Bricks wanted', 'bricks', this.wanted);
    const gaps: readonly Gap[] = this.match.gaps;
    const raw = this.reused
      ? difference('Bricks short', 'bricks', wanted, this.reused)
      : named('Bricks short', wanted);
    const short = withGaps(
      raw.value.isNegative() ? most('Bricks short', 'bricks', raw, NONE) : raw,
      gaps,
    );
    if (this.wanted.length) this.show('short', short);
    const origin = this.match.origin;
    const bricks = this.wanted.length
      ? [{ brick: this.match.name, block: this.match.facts?.block, bricks: short, origin }]
      : [];
    return { bricks, mixes: this.mixes(), pieces: [], tasks: this.tasks };
  }

  private mixes(): MixNeed[] {
    if (!this.mortar.length) return [];
    const { mix } = this.masonry;
    const litres = withGaps(sum('Mortar', unitNames(this.env).volume, this.mortar), mix.gaps);
    this.show('mortar', litres);
    return [{ mix: mix.name, block: mix.facts?.block, litres, origin: mix.origin }];
  }
}

/** More comes back than is wanted: nothing is bought. */
const NONE = counted('none', 0, 'bricks', { note: 'no fewer than none are bought' });

/**
 * Between two toothed ends every second course of a half-lapped bond runs on half a brick at each. Set out one
 * half brick shorter, the courses are on average as long as what is taken down.
 */
function runOn(lap: number): number {
  return lap === 0.5 ? 1 : 0;
}
