import { test } from 'vitest';
import { findingsIn, afterWay } from './tells';
const W = (l: string) => `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  stands held\n  length 2015 mm\n  height 8 courses\n${l}`;
const texts: Record<string,string> = {
 under: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £200\nprice\n  stage "Deposit" 25%\n  stage "Half way" £100\n',
 exact: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £200\nprice\n  stage "Deposit" 25%\n  stage "Half way" £150\n',
 over: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £200\nprice\n  stage "Deposit" 25%\n  stage "Half way" £160\n',
 neg: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £200\nprice\n  stage "Deposit" 25%\n  stage "Half way" £160\n  stage "End" rest\n',
 two: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £200\nprice\n  stage "Deposit" rest\n  stage "End" rest\n',
 penny: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £100.01\nprice\n  stage "Deposit" 50%\n  stage "End" 50%\n',
 penny3: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £100.01\nprice\n  stage "Deposit" 30%\n  stage "Mid" 30%\n  stage "End" 40%\n',
 zero: 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £200\nprice\n  stage "Deposit" £0\n  stage "End" 100%\n',
 noprice: 'perpend 1\nuse "firm.perp"\njob "A"\nprice\n  stage "Deposit" £10\n',
 cw: W('  dpc engineering 1.5 courses\n  opening a\n    from left 440 mm\n    width 235 mm\n    sill 2.5 courses\n    height 0.5 courses\n'),
 clip: W('  opening a\n    from left 440 mm\n    width 235 mm\n    sill 5 courses\n    height 4 courses\n'),
 clip1: W('  opening a\n    from left 440 mm\n    width 235 mm\n    sill 7 courses\n    height 4 courses\n'),
 clipout: W('  opening a\n    from left 440 mm\n    width 235 mm\n    sill 8 courses\n    height 4 courses\n'),
 clip0: W('  opening a\n    from left 440 mm\n    width 235 mm\n    height 9 courses\n'),
 idle: W('  fit run-1 joints\n  fit run-7 joints\n  fit coping joints\n  fit height joints\n'),
 idlec: W('  coping brick-on-edge\n  fit coping joints\n  fit coping-1 joints\n'),
 hj: W('  fit height joints\n').replace('8 courses','1225 mm'),
 pierIn: W('  pier p\n    at left\n    size 1.25 x 1 bricks\n'),
 pier: 'perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size 1.25 x 1.5 bricks\n  height 4 courses\n',
 pierMm: 'perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size 340 x 440 mm\n  height 4 courses\n',
 pierIdle: 'perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size 2 x 2 bricks\n  height 4 courses\n  coping brick-on-edge\n  fit coping joints\n  fit run-1 joints\n',
 pierIdle2: 'perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size 2 x 2 bricks\n  height 4 courses\n  fit coping joints\n',
 flem: 'perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  bond flemish\n  thick 1 brick\n  stands held\n  length 1840 mm\n  height 4 courses\n',
 one: W('').replace('8 courses', '1 course'),
 ex: 'perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  length 1790 mm\n  height 16 courses\n  coping brick-on-edge\n',
};
for (const [k, t] of Object.entries(texts)) test(k, () => {
  const f = findingsIn(t);
  console.log(k + '\n' + f.filter(x=>!x.code.startsWith('caution')).map((x) => `${x.severity} ${x.place.line+1}:${x.place.start}-${x.place.end} ${x.code}: ${x.message}` + x.ways.map((w) => `\n    ${w.preferred?'*':'-'} ${w.title} => ${JSON.stringify(w.edits.map(e=>e.text))} left ${findingsIn(afterWay(t, w.edits)).filter(y=>!y.code.startsWith('caution')).map(y=>y.code)}`).join('')).join('\n'));
});
