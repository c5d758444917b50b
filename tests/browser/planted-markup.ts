// Finds in a page what only markup of a writer's words could have put there, and hears what such markup does.
import type { BrowserContext, Page } from 'playwright-core';

/** What is planted in a page, in words. `reader` is any open page of a browser: nothing of the text is loaded or run. */
export function plantedIn(reader: Page, html: string): Promise<string[]> {
  return reader.evaluate((text) => {
    const found: string[] = [];
    const page = new DOMParser().parseFromString(text, 'text/html');
    for (const element of page.querySelectorAll('*')) {
      const tag = element.localName;
      // None of these is ours; drawings have shapes, words and groups alone.
      const strange = [
        ...['iframe', 'frame', 'object', 'embed', 'applet', 'base', 'noscript', 'math', 'portal'],
        ...['foreignobject', 'animate', 'set', 'handler', 'marquee', 'audio', 'video', 'source'],
      ];
      if (strange.includes(tag.toLowerCase())) found.push(`has ${tag}`);
      if (tag === 'meta' && /refresh|set-cookie/i.test(element.getAttribute('http-equiv') ?? ''))
        found.push('has a meta that acts');
      // Ours name no address; what they say in quotes is words.
      const style =
        tag === 'style' ? (element.textContent ?? '').replace(/"(?:[^"\\\n]|\\[\s\S])*"/g, '""') : '';
      if (/@import|url\(|planted|hit\(|display:\s*none/i.test(style)) found.push(`has the style ${style}`);
      if (tag === 'link' && !/^(?:\.\.\/)*[\w./-]+$/.test(element.getAttribute('href') ?? ''))
        found.push(`links ${element.getAttribute('href')}`);
      if (tag === 'script') {
        const json = /^application\/(?:ld\+)?json$/.test(element.getAttribute('type') ?? '');
        const own = /^(?:\/|(?:\.\.\/)*)script\/[a-z-]+\.js$/.test(element.getAttribute('src') ?? '');
        if (!json && !own)
          found.push(`has a script of ${element.getAttribute('src') ?? element.textContent}`);
        if (json) JSON.parse(element.textContent ?? '');
      }
      for (const { name, value } of element.attributes) {
        if (/^on/i.test(name) || !/^[a-z][a-z0-9:_-]*$/i.test(name)) found.push(`${tag} has ${name}`);
        if (['srcdoc', 'formaction', 'ping', 'autofocus'].includes(name)) found.push(`${tag} has ${name}`);
        const loads = /^(?:href|src|srcset|action|data|poster|background|cite|(?:xlink:)?href)$/i.test(name);
        const address = value.replace(/[\0-\x20]/g, '').toLowerCase();
        if (loads && /^(?:javascript|vbscript|data|blob|file):/.test(address))
          found.push(`${tag} ${name} is ${value}`);
        if (loads && address.includes('planted.invalid') && tag !== 'a')
          found.push(`${tag} asks for ${value}`);
        if (loads && address.startsWith('//')) found.push(`${tag} ${name} is ${value}`);
        if (name === 'style' && /url\(|expression|import|javascript|position|planted/i.test(value))
          found.push(`${tag} has the style ${value}`);
      }
    }
    return found;
  }, html);
}

/** Hears whatever markup does on the pages of a context: a call, a dialog, a thing forbidden by the policy, a request away. */
export async function trapIn(context: BrowserContext, own = 'file:'): Promise<string[]> {
  const heard: string[] = [];
  await context.addInitScript(() => {
    Object.assign(globalThis, { hit: () => console.error('hit') });
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) => {
      console.error(`refused ${violatedDirective} ${blockedURI} ${sample}`);
    });
  });
  context.on('page', (page) => {
    page.on('console', (message) => {
      if (message.type() === 'error') heard.push(`${page.url()} says ${message.text()}`);
    });
    page.on('pageerror', (error) => heard.push(`${page.url()} throws ${error.message}`));
    page.on('dialog', (dialog) => {
      heard.push(`${page.url()} asks ${dialog.message()}`);
      void dialog.dismiss();
    });
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(own) && !url.startsWith('data:')) heard.push(`${page.url()} asks for ${url}`);
    });
  });
  return heard;
}
