/** Addresses of views: #/, #/reading/BOOK, #/cost/BOOK. The key that the program gave is in none of them. */

/** The address of a view. */
export function address(view, book) {
  return view === 'start' ? '#/' : `#/${view}/${encodeURIComponent(book)}`;
}

/** The view and the workbook of the present address. */
export function route(hash = location.hash) {
  const [, view, book] = /^#\/(reading|cost)\/(.+)$/.exec(hash) ?? [];
  try {
    return view ? { view, book: decodeURIComponent(book) } : { view: 'start', book: null };
  } catch {
    return { view: 'start', book: null };
  }
}

/** The key in the address, which is taken out of it; null if there is none. */
export function takeKey() {
  const key = /^#([A-Za-z0-9_-]{20,})$/.exec(location.hash)?.[1] ?? null;
  if (key) {
    history.replaceState(null, '', location.pathname + '#/');
  }
  return key;
}
