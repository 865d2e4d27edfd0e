/** Mending of standing work: taken down and built again, bricks cut out, joints raked and pointed, coping laid again. */
import { Decimal, exact } from '../../../../shared/exact';
import { showNumber } from '../../../../shared/show';
import { decisionFor } from '../../findings/fit/fit';
import { idleFits } from '../../findings/fit/fit-idle';
import { gaugeOff, gaugeRun, gaugeSettled } from '../../findings/fit/gauge-off';
import { type Named, othersThatKeep } from '../../findings/fit/gauge-ways';
import { repairIdle } from '../../findings/idle';
import type { Remark } from '../../findings/remark';
import { type Gang, taskHours } from '../../labour/gang';
import { BlockFacts, type Env, type LineFacts } from '../../resolve/env';
import type { SettingOut } from '../../setting-out';
import { showTerm } from '../../views/show';
import {
  counted,
  difference,
  fact,
  type Gap,
  missing,
  most,
  named,
  quotient,
  share,
  sum,
  type Term,
  up,
  withGaps,
} from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import { brickTerms, mortarOf } from '../count';
import { type Brick, brickOf } from '../goods';
import { inMm, inUnit, unitNames } from '../lengths';
import { limitsOf, type Masonry, masonryOf } from '../masonry';
import type { Figure, MixNeed, Needs, TaskNeed, Work, WorkFacts } from '../needs';
import { amountSaid, lengthSaid, sizeSaid } from '../said';
import { type Standing, standingBeside, standingFigures } from '../standing/gauge';
import { aroundBricks, pointing, underCoping } from './mortar';
import { coursesRebuilt, layRebuilt, notLaid } from './rebuilt';

/** `wall` is the wall that stands there, when the file has it: its lines hold where the repair says nothing. */
export function workRepair(
  facts: BlockFacts,
  env: Env,
  gang: Gang,
  wall: SourceBlock | undefined,
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
  private rebuiltOut: SettingOut | undefined;
  /** What stands there: the repair’s own lines, then the wall’s. */
  private readonly stands: BlockFacts;
  private readonly masonry: Masonry;
  private readonly match: Brick;

  constructor(
    private readonly facts: BlockFacts,
    private readonly env: Env,
    private readonly gang: Gang,
    wall: SourceBlock | undefined,
  ) {
    this.stands = new BlockFacts(facts.block, facts.heading, env, wall ? [wall] : []);
    this.masonry = masonryOf(this.stands, env);
    const { brick } = this.masonry;
    const match = facts.line('match');
    this.match = match ? brickOf(match, env, match.origin) : brick;
  }

  done(): Work {
    this.rebuild();
    this.recope();
    this.salvage();
    this.cutOut();
    this.repoint();
    this.checkGauge();
    this.remarks.push(...repairIdle(this.facts));
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
      facts: { does: this.does, says: this.says, rebuilt: this.rebuilt() },
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
    const laid = layRebuilt(line, this.masonry, this.stands);
    const down = laid ? withGaps(laid.bricks, this.masonry.gaps) : notLaid(line, this.masonry);
    const bricks = { ...down, label: 'Bricks down' };
    this.show('down', bricks);
    this.down.push(bricks);
    this.wanted.push(named('to build again', bricks));
    this.rebuiltOut = laid?.out;
    if (laid)
      this.mortar.push(
        mortarOf(
          'building again',
          [{ tally: laid.tally, brick: this.masonry.brick }],
          this.env,
          laid.from,
        ),
      );
    this.task('take-down', 'Taking down', bricks);
    this.task('facework', 'Building again', bricks);
    this.does.add('taking-down');
    this.says.push(...this.rebuiltSaid(line));
  }

  private rebuiltSaid(line: LineFacts): string[] {
    const length = line.number('length');
    const courses = line.number('courses');
    const height = line.number('height');
    if (!length) return [];
    const high =
      courses === undefined ? height && `${this.metres(height)} high` : coursesSaid(courses);
    const size = [this.metres(length), high].filter(Boolean).join(' long and ');
    const reused = this.facts.line('salvage') ? ', reusing the bricks that clean up' : '';
    const match = this.facts.line('match') ? [`New bricks are ${this.match.title}.`] : [];
    return [`Take down a part of the wall ${size}, and build it again${reused}.`, ...match];
  }

  /** For its drawing. */
  private rebuilt(): WorkFacts['rebuilt'] {
    if (!this.rebuiltOut) return undefined;
    const down = this.down.reduce((all, { value }) => all + value.toNumber(), 0);
    const reused = this.reused?.value.toNumber() ?? 0;
    return { settingOut: this.rebuiltOut, reused: down > 0 ? Math.min(1, reused / down) : 0 };
  }

  private metres(mm: number): string {
    return lengthSaid(mm, this.env);
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

  private cutOut(): void {
    const line = this.facts.line('cut-out');
    if (!line) return;
    const bricks = line.term('bricks', 'Bricks cut out', 'bricks');
    this.show('cut-out', bricks);
    this.wanted.push(bricks);
    this.mortar.push(aroundBricks(bricks, this.masonry));
    this.task('cut-out', 'Cutting out and replacing bricks', bricks);
    this.does.add('raking');
    const count = amountSaid(line, 'bricks', (n) => showNumber(exact(n), 0));
    const some = count === '1' ? '1 damaged brick' : `${count} single damaged bricks`;
    if (count) this.says.push(`Cut out and replace ${some}.`);
  }

  /** Joints of the face, raked to a depth: the share of the face that is joint, times area, times depth. */
  private repoint(): void {
    const line = this.facts.line('repoint');
    if (!line) return;
    const area = line.term('area', 'Area repointed');
    this.show('repointed', area);
    this.mortar.push(pointing(area, line, this.masonry));
    this.task('repoint', 'Raking out and pointing', area);
    this.does.add('raking');
    const face = amountSaid(line, 'area', (m2) => this.areaSaid(m2));
    const depth = line.number('depth');
    const deep = depth ? ` ${sizeSaid(depth, this.env)} deep` : '';
    if (face)
      this.says.push(`Rake out perished joints${deep} and repoint them, over ${face} of the face.`);
  }

  private areaSaid(m2: number): string {
    const area = inUnit(fact('area', exact(m2), 'm2'), unitNames(this.env).area);
    return showTerm(area, this.env).replaceAll('\u00a0', ' ');
  }

  private recope(): void {
    const line = this.facts.line('recope');
    if (!line) return;
    const length = inMm(line.term('length', 'Coping laid again'));
    const unit = this.masonry.brick.size;
    const joint = this.masonry.jointTerms.perpend;
    const each = unit
      ? sum('a brick on edge', 'mm', [brickTerms(this.masonry)[2]!, joint])
      : missing('a brick on edge', 'mm', 'the brick is not known', line.origin);
    const bricks = up(
      'Bricks on edge',
      'bricks',
      quotient('bricks on edge', 'bricks', length, each),
    );
    this.show('recoped', bricks);
    this.down.push(bricks);
    this.wanted.push(bricks);
    const mortar = underCoping(bricks, this.masonry);
    if (mortar) this.mortar.push(mortar);
    this.task('take-down', 'Taking off the coping', bricks);
    this.task('coping', 'Laying the coping again', bricks);
    const coping = amountSaid(line, 'length', (mm) => this.metres(mm));
    if (coping)
      this.says.push(`Take off ${coping} of the coping and lay it again, bricks on edge.`);
  }

  /** Whether a bought brick keeps the gauge of the standing work, and at what joint. */
  private checkGauge(): void {
    const beside = this.beside();
    const gauge = beside ? [gaugeRun(beside)] : [];
    this.remarks.push(...idleFits(this.facts, gauge));
    if (!beside) return;
    for (const { key, term } of standingFigures(beside)) this.show(key, term);
    const others = () => othersThatKeep(beside, this.bought(), this.env);
    const remark = gaugeOff(
      beside,
      this.facts,
      () => (this.wanted.length ? others() : []),
      this.env,
    );
    if (remark) this.remarks.push(remark);
    this.cutToHeight(beside);
  }

  private beside(): Standing | undefined {
    const line = this.facts.line('gauge');
    const limits = limitsOf(this.env, 'beds-accepted', this.masonry.jointTerms.perpend);
    const courses = coursesRebuilt(this.facts, line);
    return line && standingBeside(line, this.match, this.masonry.mix, courses, limits, this.env);
  }

  /** The line that says what is bought; beside it stands the brick of the wall. */
  private bought(): Named {
    const { brick, jointTerms } = this.masonry;
    const joint = jointTerms.perpend.value.toNumber();
    const limits = limitsOf(this.env, 'joints-accepted', jointTerms.perpend);
    const beside = brick.size && { length: brick.size.length, joint, limits };
    return { facts: this.facts, key: 'match', beside };
  }

  /** Bricks that a `fit gauge cut` line has cut to height. */
  private cutToHeight(beside: Standing): void {
    const decision = decisionFor(this.facts, 'gauge');
    if (decision?.how !== 'cut' || !decision.cut || !gaugeSettled(beside, this.facts)) return;
    this.does.add('cutting');
    this.says.push(
      `Cut new bricks to ${sizeSaid(decision.cut, this.env)} high, so that courses line up.`,
    );
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

function coursesSaid(courses: number): string {
  return courses === 1 ? '1 course high' : `${courses} courses high`;
}

/** More comes back than is wanted: nothing is bought. */
const NONE = counted('none', 0, 'bricks', { note: 'no fewer than none are bought' });
