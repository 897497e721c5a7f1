/**
 * The script of the shop view, which the file carries as it stands here: it pages the screens, keeps the
 * ticks on the device, and keeps the screen awake. Without it all stands in the markup, one below the other.
 */

export const SCRIPT = `
(function () {
  'use strict';
  var root = document.documentElement;
  var screens = Array.prototype.slice.call(document.querySelectorAll('.screen'));
  var boxes = Array.prototype.slice.call(document.querySelectorAll('[data-tick]'));
  var back = document.getElementById('back');
  var next = document.getElementById('next');
  var said = document.getElementById('said');
  var awake = document.getElementById('awake');
  var key = root.getAttribute('data-key');
  // Before a screen's name in the address: what the page was made from, where it stands there.
  var base = '#' + (root.getAttribute('data-base') || '');
  var start = root.getAttribute('data-start') || 'all';

  function read(name) {
    try { return localStorage.getItem(key + ' ' + name); } catch (refused) { return null; }
  }
  function keep(name, text) {
    try { localStorage.setItem(key + ' ' + name, text); said.textContent = ''; }
    catch (refused) {
      said.textContent = 'This device refuses to keep ticks: they are gone when this page is closed. Note them on paper, or free space and allow this page to store.';
    }
  }

  var kept = {};
  try { kept = JSON.parse(read('ticks') || '{}') || {}; } catch (spoiled) { kept = {}; }
  boxes.forEach(function (box) {
    if (!box.disabled) box.checked = kept[box.getAttribute('data-tick')] === true;
    box.addEventListener('change', function () {
      if (box.checked && box.hasAttribute('data-one-of')) shutOut(box);
      kept[box.getAttribute('data-tick')] = box.checked;
      keep('ticks', JSON.stringify(kept));
      count();
      stayAwake();
    });
  });
  function shutOut(chosen) {
    chosen.closest('ul').querySelectorAll('[data-one-of]').forEach(function (box) {
      if (box === chosen) return;
      box.checked = false;
      kept[box.getAttribute('data-tick')] = false;
    });
  }
  function count() {
    screens.forEach(function (screen) {
      var own = Array.prototype.slice.call(screen.querySelectorAll('[data-tick]'));
      var words = document.querySelector('[data-of="' + screen.id + '"]');
      if (words === null || own.length === 0) return;
      var done = own.filter(function (box) { return box.checked; }).length;
      var all = own.length - (screen.querySelector('[data-one-of]') === null ? 0 : 1);
      words.textContent = done + ' of ' + all + ' done';
    });
  }

  function inAddress() {
    return screens.findIndex(function (screen) { return base + screen.id === location.hash; });
  }
  function at() { return Math.max(0, inAddress()); }
  function show() {
    var now = at();
    screens.forEach(function (screen, index) { screen.classList.toggle('shown', index === now); });
    back.disabled = now === 0;
    next.disabled = now === screens.length - 1;
    window.scrollTo(0, 0);
    try { if (now > 0) localStorage.setItem(key + ' at', screens[now].id); } catch (refused) { return; }
  }
  function goTo(name) { location.hash = base + name; }
  function go(by) {
    var to = screens[at() + by];
    if (to === undefined) return;
    goTo(to.id);
    var title = to.querySelector('h2');
    if (title !== null) title.focus();
  }
  back.addEventListener('click', function () { go(-1); });
  next.addEventListener('click', function () { go(1); });
  document.getElementById('list').addEventListener('click', function () { goTo('all'); });
  document.getElementById('untick').addEventListener('click', function () {
    if (!window.confirm('Take all ticks of this page off?')) return;
    boxes.forEach(function (box) { if (!box.disabled) box.checked = false; });
    kept = {};
    keep('ticks', '{}');
    count();
  });
  window.addEventListener('hashchange', show);

  var today = new Date().toDateString();
  if (read('read on') !== today) root.classList.add('unread');
  // Whoever has read them goes on where the page was closed.
  else if (inAddress() < 0) {
    var last = document.getElementById(read('at') || start);
    if (last !== null && screens.indexOf(last) > 0) location.replace(base + last.id);
  }
  document.getElementById('have-read').addEventListener('click', function () {
    root.classList.remove('unread');
    keep('read on', today);
    if (at() === 0) goTo(start);
    stayAwake();
  });

  var lock = null;
  function stayAwake() {
    if (lock !== null || document.visibilityState !== 'visible') return;
    if (!('wakeLock' in navigator)) {
      awake.textContent = 'This browser lets the screen go dark: have the device keep it on.';
      return;
    }
    navigator.wakeLock.request('screen').then(function (held) {
      lock = held;
      awake.textContent = 'The screen stays on while this page is in view.';
      held.addEventListener('release', function () { lock = null; });
    }, function () {
      awake.textContent = 'The device lets the screen go dark now: it may be saving its battery.';
    });
  }
  document.addEventListener('visibilitychange', stayAwake);

  root.classList.add('paged');
  count();
  show();
  stayAwake();
})();
`;

/** SHA-256 of the script, in base64: the file's own policy lets no other run. */
export const SCRIPT_HASH = 'xaNy4hDYTyp8HXghpinqZTEvIBNLB0qYZKmTUS0bXG4=';
