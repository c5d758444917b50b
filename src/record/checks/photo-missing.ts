// Finds pictures that entries name and that aren’t in photos/.
import { mentions } from '../mentions.ts';
import { didYouMean } from '../nearest.ts';
import type { Check } from './check.ts';

export const photoMissing: Check = {
  rule: 'photo-missing',
  severity: 'error',
  why: 'A picture that a day names and that isn’t there leaves a hole in the published page.',
  run: (record) => {
    const present = new Set(record.photos);
    const missing = mentions(record).filter(({ refers, name }) => refers === 'photo' && !present.has(name));
    if (missing.length === 0) return [];
    const byFolder = Map.groupBy(record.photos, folderOf);
    const byName = Map.groupBy(record.photos, (path) => nameOf(path).toLowerCase());
    return missing.map(({ name, place }) => {
      const folder = folderOf(name);
      const elsewhere = byName.get(nameOf(name).toLowerCase())?.find((path) => folderOf(path) !== folder);
      const beside = (byFolder.get(folder) ?? []).map(nameOf);
      const mend = elsewhere
        ? `Did you mean \`${elsewhere}\`?`
        : (didYouMean(nameOf(name), beside) ?? `Put it in ${folder}/, or mend the name.`);
      return { place, reason: `There is no picture \`${name}\`.`, mend };
    });
  },
};

const folderOf = (path: string) => path.slice(0, path.lastIndexOf('/'));
const nameOf = (path: string) => path.slice(path.lastIndexOf('/') + 1);
