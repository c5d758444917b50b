// Leaves out the pages that an audience doesn’t get. While the record is being written a mistake in it takes the place
// of every page: the writer sees it on saving.
import { defineMiddleware } from 'astro:middleware';
import { page } from '../views/links.ts';
import { sees, site } from './record.ts';

/** Shows the problems at the address asked for, so that the page is back once they are mended. */
export const onRequest = defineMiddleware(async ({ url }, next) => {
  if (!sees.has(fileOf(url.pathname))) return new Response(null, { status: 404 });
  if (!import.meta.env.DEV || url.pathname.endsWith(`/${page.problems}`)) return next();
  const { errors } = await site();
  return errors > 0 ? next(`/${page.problems}`) : next();
});

/** `/costs` and `/costs.html` are the same page: no body makes no file. */
function fileOf(pathname: string): string {
  const path = decodeURIComponent(pathname).replace(/^\//, '');
  return path === '' || path.endsWith('.html') ? path : `${path}.html`;
}
