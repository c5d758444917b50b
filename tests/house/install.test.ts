import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// Why: what is installed runs with the rights of whoever installs it. Scripts are the few that were looked at, and every
// package is the one that the lock file names by its sum.
type Wanted = Record<string, string>;
type Locked = {
  version?: string;
  resolved?: string;
  integrity?: string;
  link?: boolean;
  inBundle?: boolean;
  hasInstallScript?: boolean;
  optional?: boolean;
} & Partial<Record<'dependencies' | 'devDependencies', Wanted>>;

const json = <T>(file: string) => JSON.parse(readFileSync(file, 'utf8')) as T;
const manifest = json<{
  dependencies: Wanted;
  devDependencies: Wanted;
  allowScripts: Record<string, boolean>;
}>('package.json');
const { packages } = json<{ packages: Record<string, Locked> }>('package-lock.json');
const { '': root, ...installed } = packages;
const all = Object.entries(installed);
const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

describe('the lock file', () => {
  it('is kept in git', () => {
    const kept = execFileSync('git', ['ls-files', 'package-lock.json'], { encoding: 'utf8' });
    expect(kept.trim()).toBe('package-lock.json');
  });

  it('is in step with package.json, names and versions', () => {
    expect(root?.dependencies).toEqual(manifest.dependencies);
    expect(root?.devDependencies).toEqual(manifest.devDependencies);
    const direct = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(direct.length).toBeGreaterThan(20);
    // Every range is one version: what was tried is what is installed.
    expect(direct.filter(([, range]) => !/^\d+\.\d+\.\d+$/.test(range))).toEqual([]);
    expect(direct.filter(([name, range]) => installed[`node_modules/${name}`]?.version !== range)).toEqual(
      [],
    );
  });

  it('names each package by its sum, and none by git, by a folder or by a host', () => {
    expect(all.length).toBeGreaterThan(200);
    const inside = all.filter(([, { inBundle }]) => !inBundle);
    expect(inside.filter(([, { integrity }]) => !/^sha512-/.test(integrity ?? '')).map(nameOfEntry)).toEqual(
      [],
    );
    expect(all.filter(([, { link }]) => link).map(nameOfEntry)).toEqual([]);
    expect(all.filter(([, { resolved }]) => resolved !== undefined).map(nameOfEntry)).toEqual([]);
  });

  it('asks for nothing but versions of a registry', () => {
    const asked = all.flatMap(([, { dependencies = {} }]) => Object.entries(dependencies));
    const foreign = /^(?:git|https?:|file:|link:|github:|[\w.-]+\/[\w.-]+(?:#|$))/;
    expect(asked.length).toBeGreaterThan(200);
    expect(asked.filter(([, range]) => foreign.test(range))).toEqual([]);
  });
});

describe('scripts at installing', () => {
  it('are of packages that package.json has a word about, each allowed or refused', () => {
    const scripted = all.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => nameOf(path));
    expect(scripted.filter((name) => !(name in manifest.allowScripts))).toEqual([]);
  });

  it('run for `node` alone, which fetches nothing but its own binary', () => {
    const allowed = Object.keys(manifest.allowScripts).filter((name) => manifest.allowScripts[name]);
    expect(allowed).toEqual(['node']);
  });
});

function nameOfEntry([path]: [string, Locked]): string {
  return nameOf(path);
}
