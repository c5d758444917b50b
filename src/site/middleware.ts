// While the record is being written a mistake in it takes the place of every page: the writer sees it on saving.
import { defineMiddleware } from 'astro:middleware';
import { page } from '../views/links.ts';
import { site } from './record.ts';

/** Shows the problems at the address asked for, so that the page is back once they are mended. */
export const onRequest = defineMiddleware(async ({ url }, next) => {
  if (!import.meta.env.DEV || url.pathname.endsWith(`/${page.problems}`)) return next();
  const { errors } = await site();
  return errors > 0 ? next(`/${page.problems}`) : next();
});
