// Draws the page of one day, or that of the checks, from a record that is handed over: nothing is built or served.
import { experimental_AstroContainer as Container } from 'astro/container';
import { page } from '../views/links.ts';
import Day from './pages/day/[entry].astro';
import Problems from './pages/problems.astro';

type Drawn = Parameters<Container['renderToString']>[0];

const drawing = Container.create();

/** The page of an entry that the record has, as HTML; without one that of the checks. */
export async function drawnPage(entry: string | undefined): Promise<string> {
  const container = await drawing;
  const at = (path: string) => ({ request: new Request(`http://desk/${path}`), partial: false });
  return entry === undefined
    ? container.renderToString(Problems, at(page.problems))
    : // A page that has paths is typed as one whose props nobody can give.
      container.renderToString(Day as unknown as Drawn, { ...at(page.day(entry)), params: { entry } });
}
