// Draws the page of one day, and that of the checks, from a record that is opened elsewhere: nothing is built or served.
import { experimental_AstroContainer as Container } from 'astro/container';
import { page } from '../views/links.ts';
import Day from './pages/day/[entry].astro';
import Problems from './pages/problems.astro';
import { drawFrom, type OpenedElsewhere } from './record.ts';

const drawing = Container.create();

/** Both pages as HTML. One draws at a time, since the pages share the record that they are drawn from. */
export async function drawnDay(
  entry: string,
  elsewhere: OpenedElsewhere,
): Promise<{ day: string; problems: string }> {
  const container = await drawing;
  drawFrom(elsewhere);
  const at = (path: string) => ({ request: new Request(`http://desk/${path}`), partial: false });
  return {
    day: await container.renderToString(Day, { ...at(page.day(entry)), params: { entry } }),
    problems: await container.renderToString(Problems, at(page.problems)),
  };
}
