// A command that serves pages, started as a person starts it and stopped when the test is over.
import { spawn } from 'node:child_process';
import { stripVTControlCharacters } from 'node:util';
import { onTestFinished } from 'vitest';

/** Starts `npm run <name>` on a record and resolves to the address that it prints. */
export function serve(name: string, env: Record<string, string> = {}): Promise<string> {
  const child = spawn('npm', ['run', name], { detached: true, env: { ...withoutVitest(), ...env } });
  const over = new Promise<void>((done) => child.once('exit', () => done()));
  onTestFinished(async () => {
    // npm starts the command as a child of its own, so the whole group is ended.
    if (child.pid !== undefined && child.exitCode === null) process.kill(-child.pid, 'SIGTERM');
    await over;
  });
  return new Promise((found, failed) => {
    let said = '';
    const hear = (chunk: Buffer) => {
      said += stripVTControlCharacters(chunk.toString());
      const [address] = /http:\/\/[^\s"'<>]+/.exec(said) ?? [];
      if (address) found(address);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.once('exit', (code) => failed(new Error(`npm run ${name} ended with ${code}.\n${said}`)));
  });
}

/** The environment as a person has it: the test runner's own words in it would change how pages are served. */
function withoutVitest(): NodeJS.ProcessEnv {
  const own = /^(VITEST.*|NODE_ENV|TEST|MODE|DEV|PROD|SSR|BASE_URL)$/;
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !own.test(name)));
}
