import { test } from 'vitest';
import { setOut } from '/work/main/server/engine/setting-out';
import { BONDS, BOND_NAMES, overAll, wall } from '/work/main/tests/setting-out/fixtures';
import { everyCourse, perpends, lapOf } from '/work/main/tests/setting-out/expand';
test('x',()=>{
 let seed=1;const rnd=(n:number)=>{seed=(seed*1103515245+12345)%2147483648;return Math.floor(seed/65536)%n};
 for(const name of BOND_NAMES) for(const thickness of [1,2] as const){
  if(name==='stack')continue;
  let walls=0,badWalls=0,rowsN=0,badRows=0;const hist:Record<string,number>={};let ex='';
  for(let k=0;k<300;k++){
   const n=20+rnd(60);const openings=[];let at=2+rnd(8);let i=0;
   while(at<n-6){const w=3+rnd(10);if(at+w>n-2)break;const sill=rnd(3)*2;openings.push({name:'o'+i++,from:at*112.5-10,width:w*112.5+10,sill,top:6+rnd(3)*2});at+=w+2+rnd(10)}
   const out=setOut(wall({bond:BONDS[name],thickness,length:overAll(n),courses:14,openings}));
   const rows=everyCourse(out);let bad=false;
   for(let i=1;i<rows.length;i++){rowsN++;
     const a=rows[i-1]!.segments.flatMap(s=>perpends(s.bricks)),b=rows[i]!.segments.flatMap(s=>perpends(s.bricks));
     const l=Math.min(...a.map(x=>Math.min(...b.map(y=>Math.abs(x-y)))));
     if(l<56.2){badRows++;bad=true;const key=(out.bands.some(b=>b.from===i)?'band':'same')+(l<1?'0':'<');hist[key]=(hist[key]??0)+1;if(!ex||(key[0]=='s'&&!ex.includes('same')))ex=JSON.stringify({n,openings:openings.map(o=>[o.from,o.width,o.sill,o.top]),i,l,key})}
   }
   walls++;if(bad)badWalls++;
  }
  console.log(name,thickness,walls,badWalls,rowsN,badRows,JSON.stringify(hist),ex.slice(0,500));
 }
});
