import { readFileSync } from 'node:fs';
import { readAtlas, atlasFile, atlasFolder } from '/work/main/src/cli/atlas/files.ts';
import { readLibrary } from '/work/main/src/cli/library.ts';
import { soundSetup } from '/work/main/src/cli/sound-setup.ts';
import { quizPlantOf, MAKERS } from '/work/main/src/quiz/index.ts';
import { lintOf } from '/work/main/src/cli/quiz/lint-of.ts';
import { namesOfPlant, wordItem } from '/work/main/src/wording/index.ts';
import { createRun } from '/work/main/src/engine/index.ts';
import { en } from '/work/main/src/i18n/en/index.ts';
import { addMessages } from '/work/main/src/i18n/index.ts';
addMessages(en);
const [plantId, kind, every, off] = process.argv.slice(2);
const root='/work/main';
const bank = JSON.parse(readFileSync(root+'/assets/page/quiz/items.json','utf8'));
const cards = (bank.cards??bank.items??bank) as any[];
const ids = cards.map((c:any)=>typeof c==='string'?c:c.id ?? c[0]) as string[];
const lib = readLibrary(root); if(!lib.ok) throw 1;
const sound = soundSetup(lib.value, plantId!)!;
const plant = quizPlantOf(sound, readAtlas(atlasFile(atlasFolder(root), plantId!))!);
const names = namesOfPlant(sound.plant, createRun(sound,{keep:'hash only'}).channels);
const lint = lintOf(plant);
const kinds = kind==='all'?Object.keys(MAKERS):[kind!];
for (const k of kinds) {
const mine = ids.filter(i=>i.startsWith(`${k}/${plantId}/`)||i.startsWith(`${k!.replace(/ /g,'-')}/${plantId}/`));
console.log(`==== ${k} ${plantId} ${mine.length}`);
mine.forEach((id,ix)=>{ if(ix % +every! !== +(off??0)) return; const s=+id.split('/')[2]!;
 const m=(MAKERS as any)[k!].make(plant,s); if(!m.ok){console.log('\n!! not made', id, m.why);return;}
 const w:any=wordItem(m.item,names); console.log(`\n#${k} ${plantId} ${s} [${m.item.topic}] d=${m.item.difficulty.toFixed(2)} lint=${JSON.stringify(lint(m.item))}`);
 if(w.caution) console.log('CAUTION', w.caution);
 console.log(w.tells.join(' ')); for(const r of w.start??[]) console.log('  | '+r); for(const r of w.readings) console.log('  - '+r); console.log('Q', w.asks);
 (w.options??w.steps??[]).forEach((o:any,i:number)=>console.log(` ${w.answer!=='order'&&i===w.key?'*':' '} ${o.text}   <- ${o.why.join(' ')}`));
 if(w.answer==='order') console.log(w.key, JSON.stringify(w.why??'')); if(w.answer==='number') console.log(w.said, w.from, w.to, w.unit, w.working, JSON.stringify(w.mistakes));
});}
