// Says which imports of a file break the rule, each with its file, line and reason.
import { isBuiltin } from 'node:module';
import { posix } from 'node:path';
import ts from 'typescript';
import { KEPT, OPENS, type Room, roomOf } from './rooms.ts';

/** One sentence for each import that its room doesn't allow: `src/figures/days.ts:3 …`. */
export function brokenImports(file: string, text: string): string[] {
  const room = roomOf(file);
  if (room === undefined) return [`${file}:1 lies in no room: add its folder to the table of rooms`];
  const { importedFiles } = ts.preProcessFile(file.endsWith('.astro') ? scriptsOf(text) : text, true, true);
  return importedFiles.flatMap(({ fileName, pos }) => {
    const reason = refused(room, file, fileName);
    const line = text.slice(0, pos).split('\n').length;
    return reason ? [`${file}:${line} imports \`${fileName}\`: ${reason}`] : [];
  });
}

/** The scripts of an .astro file, in their lines: what stands between `---` lines and in `<script>`. */
function scriptsOf(text: string): string {
  const script = /^---\n[\s\S]*?\n---$|(?<=<script[^>]*>)[\s\S]*?(?=<\/script>)/gm;
  const blank = text.split('').map((letter): string => (letter === '\n' ? '\n' : ' '));
  for (const { 0: found, index } of text.matchAll(script)) {
    blank.splice(index, found.length, ...found.replaceAll('---', '   ').split(''));
  }
  return blank.join('');
}

function refused(room: Room, file: string, specifier: string): string | undefined {
  if (specifier.startsWith('.')) return refusedFile(room, file, specifier);
  if (isBuiltin(specifier)) {
    return room.node || OPENS.includes(file) ? undefined : `${room.room} may not use node: ${room.why}`;
  }
  const name = specifier.split('/', specifier.startsWith('@') ? 2 : 1).join('/');
  const kept = KEPT[name];
  if (kept && !kept.includes(room.room)) return `${name} belongs to ${kept.join(' and ')}: ${room.why}`;
  if (room.packages === 'any' || room.packages.includes(name)) return undefined;
  return `${room.room} may not import ${name}: ${room.why}`;
}

function refusedFile(room: Room, file: string, specifier: string): string | undefined {
  const target = posix.normalize(posix.join(posix.dirname(file), specifier));
  if (target.startsWith('shared/')) return undefined;
  const other = roomOf(target);
  if (other === undefined) return `${target} is outside the rooms`;
  if (other.room === room.room || room.rooms.includes(other.room)) return undefined;
  if (room.room === 'site' && other.room === 'site/browser') return undefined;
  if (OPENS.includes(file) && other.room !== 'commands') return undefined;
  return `${room.room} may not import ${other.room}: ${room.why}`;
}
