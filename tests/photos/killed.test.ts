import { spawn } from 'node:child_process';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { expect, it } from 'vitest';
import { emptyFolder } from '../commands/run.ts';
import { pixels } from './pictures.ts';
import { bytesIn, recordOf } from './record-of.ts';

const KILLS = 10;

/** Makes the pictures of a folder and says when it has begun: folder, cache. */
const MAKING = `
import { readdirSync } from 'node:fs';
import { makePhotos } from './src/photos/make.ts';
const [folder, cache] = process.argv.slice(1);
const files = readdirSync(folder + '/photos').sort().map((name) => 'photos/' + name);
console.log('begun');
await makePhotos(folder, files, { cache });
`;

/** Makes in a process of its own, killed after so many milliseconds of making. Gives the signal that ended it. */
function makeApart(folder: string, cache: string, killAfter = Number.POSITIVE_INFINITY) {
  return new Promise<{ signal: string | null; code: number | null; took: number }>((done) => {
    const making = spawn(process.execPath, ['--input-type=module', '-e', MAKING, folder, cache], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let begun = performance.now();
    making.stdout.once('data', () => {
      begun = performance.now();
      if (Number.isFinite(killAfter)) setTimeout(() => making.kill('SIGKILL'), killAfter);
    });
    making.on('close', (code, signal) => done({ code, signal, took: performance.now() - begun }));
  });
}

it('killed ten times at any moment and run again, gives what an undisturbed run gives, byte for byte', async () => {
  const pictures = await Promise.all(
    Array.from({ length: 24 }, async (_, n) => {
      const picture = pixels(1000, 750, (x, y) => [
        (x * (n + 3)) % 256,
        (y * (n + 5)) % 256,
        (x + y + n) % 256,
      ]);
      return [`IMG_${1000 + n}.jpg`, await picture.jpeg().toBuffer()] as const;
    }),
  );
  const { folder, cache } = await recordOf(new Map(pictures));
  const undisturbed = join(await emptyFolder(), 'cache');
  const { took, code } = await makeApart(folder, undisturbed);
  expect(code).toBe(0);

  const chance = xoroshiro128plus(1934);
  const signals: (string | null)[] = [];
  for (let kill = 0; kill < KILLS; kill++) {
    // Short enough that ten of them don't come to the end, whatever falls out.
    signals.push((await makeApart(folder, cache, (uniformFloat64(chance) * took) / KILLS)).signal);
  }
  expect(signals.filter((signal) => signal === 'SIGKILL').length).toBeGreaterThan(KILLS / 2);
  expect((await makeApart(folder, cache)).code).toBe(0);

  const wanted = await bytesIn(undisturbed);
  expect(wanted.size).toBe(24 * 3 + 1);
  expect(await bytesIn(cache)).toEqual(wanted);
  expect((await readdir(cache)).filter((name) => name.startsWith('.'))).toEqual([]);
}, 60_000);
