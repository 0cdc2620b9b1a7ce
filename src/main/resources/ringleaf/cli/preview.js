(() => {
'use strict';
const banner = document.getElementById('banner');
const events = '/events';
const again = 3000;
let shown = mark(document.lastChild && document.lastChild.nodeType === 8 ? document.lastChild.data : '');
let wanted = null, problem = '', lost = '', busy = false;

/* The page carries its digest as a comment after its end. */
function mark(text) { return /^[\w-]+$/.test(text) ? text : null; }

function tell() {
  const text = lost || problem;
  banner.className = lost ? 'lost' : '';
  if (banner.textContent !== text) banner.textContent = text;
  banner.hidden = !text;
}
async function draw() {
  if (busy || wanted === null || wanted === shown) return;
  busy = true;
  const target = wanted;
  try {
    const answer = await fetch('/', { cache: 'no-store' });
    if (!answer.ok) throw new Error(answer.status);
    const text = await answer.text();
    window.ringleaf.show(text);
    shown = mark((/<!--([\w-]+)-->$/.exec(text) || ['', ''])[1]) || target;
  } catch (failure) {
    /* The next word from the preview brings another try. */
  }
  busy = false;
  if (wanted !== target) draw();
}
function listen() {
  const source = new EventSource(events);
  const end = () => {
    lost = 'The preview has ended. This page stays as it is, and goes on when `ringleaf preview` serves here again: start it with --port ' + location.port + '.';
    tell();
  };
  source.addEventListener('state', event => {
    const state = JSON.parse(event.data);
    lost = '';
    problem = state.problem;
    if (problem && document.querySelector('.mechanism')) problem += '\n\nThe last good design stays in view.';
    wanted = state.page;
    tell();
    draw();
  });
  source.addEventListener('end', end);
  source.onerror = () => {
    end();
    if (source.readyState === EventSource.CLOSED) setTimeout(listen, again);
  };
}
listen();
})();
