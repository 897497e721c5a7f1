/** The entry of saw.html: shows the set-up in the address, or says why it doesn't. */
import { codeIn, sawDocument } from '../../exports/shop-view/saw-page.ts';
import { SCRIPT } from '../../exports/shop-view/script.ts';
import { keepOffline } from '../offline/keep-offline.ts';

const code = codeIn(window.location.hash);

function show(): void {
  const read = sawDocument(code);
  const main = document.querySelector('main');
  if (!read.ok) {
    const words = Object.assign(document.createElement('p'), { className: 'strong' });
    words.setAttribute('role', 'alert');
    words.textContent = read.faults.map(({ message }) => message).join(' ');
    const heading = document.createElement('h1');
    heading.textContent = document.title;
    main?.replaceChildren(heading, words);
    return;
  }
  const { root, body, title } = read.value;
  document.title = title;
  for (const [name, value] of Object.entries(root)) {
    document.documentElement.setAttribute(name, value);
  }
  // All words of the code went through escapeHtml, as in the file for the saw.
  document.body.innerHTML = body;
  const script = document.createElement('script');
  script.textContent = SCRIPT;
  document.body.append(script);
}

show();
// Another code scanned in the same window changes the fragment alone.
window.addEventListener('hashchange', () => {
  if (codeIn(window.location.hash) !== code) window.location.reload();
});
void keepOffline('saw');
