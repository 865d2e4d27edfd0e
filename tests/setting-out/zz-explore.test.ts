import { test } from 'vitest';
import { setOut } from '/work/main/server/engine/setting-out';
import { BONDS, BOND_NAMES, overAll, wall } from '/work/main/tests/setting-out/fixtures';
const show=(o:any)=>{let t='';for(const b of o.bands){t+=(`band ${b.from}-${b.to}\n`);for(const s of b.segments){t+=(`  ${s.from}-${s.to} ${s.left}/${s.right} halves ${s.halves} fits ${s.fits} ${JSON.stringify(s.broken)}\n`);for(const r of s.runs)t+='     '+r.from+' '+r.length+' j '+r.joint.toFixed(3)+r.groups.map((g:any)=>'('+g.pieces.map((p:any)=>p.piece[0]+(p.piece=='half'?'½':p.piece=='closer'?'l':p.piece=='cut'?'ut'+p.length.toFixed(1):'')+(p.count>1?p.count:'')).join(' ')+')'+(g.times>1?'x'+g.times:'')).join(' ')+'\n'}}console.log(t)};
test('x',()=>{
 const mk=(n:number,bond:any,o:number[][],thickness=2)=>show(setOut(wall({bond,thickness:thickness as 2,length:overAll(n),courses:14,openings:o.map(([from,width,sill,top],i)=>({name:'o'+i,from,width,sill,top}) as never)})));
 mk(25,BONDS.flemish,[[552.5,797.5,0,8],[1790,685,4,10]]);
 mk(76,BONDS.english,[[1002.5,910,4,10],[2577.5,1360,2,8],[4827.5,460,4,6],[5502.5,1022.5,4,6],[7302.5,685,4,8]]);
 mk(34,BONDS.englishGarden,[[215,910,0,10],[1565,1022.5,0,10],[2915,347.5,2,6]]);
});
