'use strict';
(() => {
const SVG = 'http://www.w3.org/2000/svg';
const SQUASH = 0.375, RISE = Math.sqrt(1 - SQUASH * SQUASH);
const SWEEP_MS = 4000, REST_MS = 150, MOST_ZOOM = 60;
const $ = (root, query) => root.querySelector(query);
const $$ = (root, query) => [...root.querySelectorAll(query)];
const make = (name, attributes = {}, ...children) => fill(document.createElement(name), attributes, children);
const draw = (name, attributes = {}, ...children) => fill(document.createElementNS(SVG, name), attributes, children);
function fill(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}
const calm = () => matchMedia('(prefers-reduced-motion: reduce)').matches;
/* Changes a text only when it is another one: whatever is written is laid out and painted anew. */
function write(element, text) {
  const node = element.firstChild;
  if (!node) element.append(text);
  else if (node.data !== text) node.data = text;
}
const say = text => { $(document, '#said').textContent = text; };
const words = name => name.replace(/[-_]/g, ' ');
const clamp = (value, least, most) => Math.min(most, Math.max(least, value));

/* Columns of the table of the travel: what to call them, and the unit that their name tells. */
const UNITS = [['_deg', '\u00B0'], ['_area', 'area'], ['_torque', ' Nmm'], ['_us', ' \u00B5s'], ['_percent', ' %'], ['_mm', 'length']];
const NAMES = { servo_deg: 'servo turn', ring_deg: 'ring turn', blade_deg: 'blade turn', slot_pressure_deg: 'slot pressure angle', angle_in_deg: 'driver turn', angle_out_deg: 'driven turn' };
/* What is read first; where no servo turns anything, the ring's turn stands in its place. */
const KEY = ['opening_diameter', 'servo_deg', 'clearance', 'gap', 'lap', 'slot_pressure_deg'];
/* Lengths and areas are told in the spec's unit: what a column is to be divided by, and the decimals it has beside the usual ones. */
function column(name, [length, mm, area, mm2, step]) {
  const unit = UNITS.find(([end]) => name.endsWith(end)), kind = unit ? unit[1] : 'length';
  const bare = unit && !['_area', '_torque'].includes(unit[0]) ? name.slice(0, -unit[0].length) : name;
  const label = NAMES[name] || words(bare), finer = -Math.round(Math.log10(step / 0.01));
  if (kind === 'length') return { name, label, unit: ` ${length}`, by: mm, finer };
  if (kind === 'area') return { name, label, unit: ` ${area}`, by: mm2, finer: mm2 > 1 ? 2 : 0 };
  return { name, label, unit: kind, by: 1, finer: 0 };
}
function shown(value, unit, finer = 0) {
  if (value === null || value === undefined) return 'none';
  const size = Math.abs(value);
  const text = value.toFixed(Math.max(0, finer + (size >= 100 ? 1 : size >= 1 || size === 0 ? 2 : 3)));
  return (text.includes('.') ? text.replace(/\.?0+$/, '') : text).replace(/^-0$/, '0').replace('-', '\u2212') + unit;
}

/* Ends the listeners of a page that a newer one takes the place of. */
let alive = new AbortController(), mechanisms = [];

class Mechanism {
  constructor(root, data) {
    this.root = root; this.data = data; this.at = 0; this.apart = 0; this.zoom = 1; this.centre = null; this.playing = 0;
    this.kept = new Set(); this.finding = ''; this.charts = [];
    this.svg = $(root, '.mechanism-picture'); this.stage = $(root, '.stage'); this.frame = $(root, '.frame');
    this.last = data.states.length - 1;
    this.columns = data.columns.map(name => column(name, data.unit));
    this.table = data.table.map((own, i) => own.map(value => value === null ? null : value / this.columns[i].by));
    const box = this.svg.viewBox.baseVal;
    this.home = { x: box.x, y: box.y, w: box.width, h: box.height };
    this.series = data.series.map(own => { let sum = 0; return Float64Array.from(own, step => (sum += step) / 1e4); });
    this.sheaves = $$(this.svg, '.sheaf').map(g => ({
      g, inner: g.firstElementChild, part: +g.dataset.part, z: g.dataset.z.split(' ').map(Number),
    }));
    this.movers = $$(this.svg, 'use[data-m]').map(use => ({ use, member: data.members[+use.dataset.m] }))
      .filter(mover => data.bodies[mover.member[2]].length);
    this.lifts();
    this.leafOrder();
    this.controls();
    this.lights();
    this.findings();
    this.plots();
    this.steps();
    this.move(0);
    this.film = new Film(this);
    this.frameView();
  }

  /* Motion */
  pose(body, s) {
    const own = this.data.bodies[body];
    if (!own.length) return [0, 0, 0];
    const low = Math.min(Math.floor(s), this.last), high = Math.min(low + 1, this.last), share = s - low;
    const mix = series => series[low] + (series[high] - series[low]) * share;
    const angle = mix(this.series[own[0]]);
    if (Array.isArray(own[1])) return [angle, mix(this.series[own[1][0]]), mix(this.series[own[1][1]])];
    const c = Math.cos(angle * Math.PI / 180), n = Math.sin(angle * Math.PI / 180), [, x, y] = own;
    return [angle, x - c * x + n * y, y - n * x - c * y];
  }
  placed(member, s) {
    const [angle, x, y] = this.pose(member[2], s), [, , , home = 0, hx = 0, hy = 0] = member;
    const c = Math.cos(angle * Math.PI / 180), n = Math.sin(angle * Math.PI / 180);
    return [angle + home, x + c * hx - n * hy, y + n * hx + c * hy];
  }
  transform(member, s) {
    const [angle, x, y] = this.placed(member, s);
    return `translate(${x.toFixed(4)} ${(-y).toFixed(4)}) rotate(${(-angle).toFixed(5)})`;
  }
  move(s) {
    this.at = s;
    this.state = Math.round(s);
    this.wedges(s);
    const filmed = this.film && this.film.run(s);
    /* While the film shows the parts, figures and the outlines under it follow in turns with what is seen. */
    this.turn = filmed ? this.turn + 1 : 0;
    if (this.turn % 4 === 0) this.pictured(s);
    if (this.turn % 2 === 0) this.told(plot => plot.seen);
  }
  pictured(s) {
    for (const mover of this.movers) mover.use.setAttribute('transform', this.transform(mover.member, s));
    this.clips();
  }
  clips() {
    if (this.leaf) for (const { on, g, d, line } of this.leaf.wedges) {
      g.style.display = on ? '' : 'none';
      if (on) d.setAttribute('d', line);
    }
  }
  told(which) {
    if (this.state !== this.said) this.values(this.said = this.state);
    for (const plot of this.charts) if (which(plot)) plot.cursor(this.state);
  }
  /* What can wait while the drive moves. */
  settle() { this.pictured(this.at); this.told(() => true); }
  label(state) { return this.data.labels[state] || `state ${this.data.states[state]} of ${this.data.states[this.last]}`; }
  value(index, state) { return shown(this.table[index][state], this.columns[index].unit, this.columns[index].finer); }
  values(state) {
    for (const [output, index] of this.readouts) write(output, this.value(index, state));
    if (this.place) write(this.place, this.data.places[this.data.placeAt[state]]);
    this.slider.value = state;
    const said = this.sentence(state);
    this.slider.setAttribute('aria-valuetext', said);
    write(this.stateOut, this.label(state));
  }
  sentence(state) {
    const key = this.keys.slice(0, 3).map(i => `${this.columns[i].label} ${this.value(i, state)}`);
    const place = this.place ? ` at ${this.data.places[this.data.placeAt[state]]}` : '';
    return `${this.label(state)}: ${key.join(', ')}${place}`;
  }

  /* Leaves: each over the one before, all round; see how the picture's own text tells it. */
  leafOrder() {
    const sheaf = this.sheaves.find(one => one.g.classList.contains('leaves'));
    this.leaf = null;
    if (!sheaf || this.data.leaves.length < 3) return;
    const path = $(this.svg, `${$(sheaf.g, 'use').getAttribute('href')} path`) || $(this.svg, $(sheaf.g, 'use').getAttribute('href'));
    const length = path.getTotalLength(), points = [];
    for (let i = 0; i < 256; i++) {
      const p = path.getPointAtLength(length * i / 256);
      points.push([p.x, -p.y]);
    }
    points.push(points[0]);
    const wedges = this.data.leaves.slice(0, -1).map((member, i) => {
      const id = `${this.root.id}-w${i}`, d = draw('path'), first = sheaf.inner.children[i];
      const g = draw('g', { 'clip-path': `url(#${id})` }, first.cloneNode());
      const clip = draw('clipPath', { id }, d);
      this.movers.push({ use: g.firstChild, member: this.data.members[member] });
      return { d, g, clip };
    });
    for (const wedge of wedges) sheaf.inner.append(wedge.clip, wedge.g);
    this.leaf = { sheaf, points, wedges, count: this.data.leaves.length, reach: 4 * (this.home.w + this.home.h) };
    const begin = [0, 1].map(i => this.range(this.data.members[this.data.leaves[i]], 0)[0]);
    this.leaf.onwards = Math.sin(begin[1] - begin[0]) > 0;
  }
  range(member, s) {
    const [angle, x, y] = this.placed(member, s), c = Math.cos(angle * Math.PI / 180), n = Math.sin(angle * Math.PI / 180);
    let before = null, sum = 0, least = Infinity, most = -Infinity;
    for (const [px, py] of this.leaf.points) {
      const direction = Math.atan2(n * px + c * py + y, c * px - n * py + x);
      if (before === null) sum = direction;
      else sum += Math.atan2(Math.sin(direction - before), Math.cos(direction - before));
      before = direction;
      least = Math.min(least, sum); most = Math.max(most, sum);
    }
    return [least, Math.min(most, least + 2 * Math.PI)];
  }
  wedges(s) {
    if (!this.leaf) return;
    const { wedges, count, onwards, reach } = this.leaf;
    const [from, to] = this.range(this.data.members[this.data.leaves[0]], s);
    const pitch = 2 * Math.PI / count, room = pitch / 4, shared = Math.min(to - from - pitch, 2 * Math.PI - 2 * pitch);
    const point = a => `${(reach * Math.cos(a)).toFixed(2)} ${(-reach * Math.sin(a)).toFixed(2)}`;
    const arc = a => `A${reach} ${reach} 0 0 0 ${point(a)}`;
    wedges.forEach((own, i) => {
      const begun = i * pitch, on = shared > 0 && begun < shared + room;
      own.on = on;
      if (!on) return;
      const start = onwards ? from + begun - room : to - shared - room, sweep = shared + 2 * room - begun;
      own.line = `M0 0L${point(start)}${arc(start + sweep / 2)}${arc(start + sweep)}Z`;
    });
    /* Where no leaf reaches round to where the first one begins, the widest wedge, that of the first, would serve all. */
    this.leaf.one = to - from + shared + room < 2 * Math.PI;
  }

  /* Controls */
  controls() {
    const id = this.root.id;
    this.slider = make('input', { type: 'range', id: `${id}-drive`, min: 0, max: this.last, step: 1, value: 0 });
    this.slider.addEventListener('input', () => { this.stop(); this.move(+this.slider.value); });
    this.slider.addEventListener('change', () => say(this.sentence(this.state)));
    this.button = make('button', { type: 'button', class: 'play' }, '\u25B6 Play');
    this.button.addEventListener('click', () => this.playing ? this.pause() : this.play());
    this.stateOut = make('output', { for: `${id}-drive` });
    const drive = make('div', { class: 'drive' }, this.button,
      make('div', {}, make('label', { for: `${id}-drive` }, 'Drive: '), this.stateOut, this.slider));
    const apart = make('input', { type: 'range', id: `${id}-apart`, min: 0, max: 100, step: 1, value: 0, class: 'pull' });
    apart.addEventListener('input', () => { apart.setAttribute('aria-valuetext', `${apart.value} percent apart`); this.pull(+apart.value / 100); });
    this.apartSlider = apart;
    this.note = make('output', {});
    const bar = make('div', { class: 'bar' });
    for (const [name, title, by] of [['+', 'Zoom in', 2], ['\u2212', 'Zoom out', 0.5], ['Fit', 'Show the whole mechanism', 0]]) {
      const button = make('button', { type: 'button', class: 'zoom', 'aria-label': title, title }, name);
      button.addEventListener('click', () => by ? this.zoomTo(this.zoom * by) : this.whole());
      bar.append(button);
    }
    this.back = make('button', { type: 'button', class: 'back', hidden: '' }, 'Back to the finding');
    this.back.addEventListener('click', () => { this.source.scrollIntoView({ block: 'center' }); this.source.focus(); });
    bar.append(this.back, this.note);
    this.frame.append(drive, bar);
    this.panel();
    const layers = $(this.root, '.layers');
    layers.append(make('label', { class: 'apart', for: `${id}-apart` }, 'Pull apart', apart));
    for (const box of $$(layers, 'input[type=checkbox]')) {
      const part = +box.closest('[data-part]').dataset.part;
      box.addEventListener('change', () => this.hide(part, !box.checked));
    }
    this.drag();
  }
  panel() {
    const list = make('dl', { class: 'now' });
    const driven = this.columns.some(c => c.name === 'servo_deg'), key = KEY.map(name => name === 'servo_deg' && !driven ? 'ring_deg' : name);
    const rank = name => (key.indexOf(name) + key.length + 1) % (key.length + 1) + (key.includes(name) ? 0 : key.length);
    this.keys = this.columns.map((c, i) => i).sort((a, b) => rank(this.columns[a].name) - rank(this.columns[b].name) || a - b);
    this.readouts = this.keys.map(index => {
      const output = make('dd');
      list.append(make('div', key.slice(0, 4).includes(this.columns[index].name) ? { class: 'key' } : {},
        make('dt', {}, this.columns[index].label), output));
      return [output, index];
    });
    if (this.data.placeColumn) {
      this.place = make('dd');
      list.append(make('div', { class: 'place' }, make('dt', {}, words(this.data.placeColumn)), this.place));
    }
    $(this.root, '.panel').prepend(list);
  }
  play() {
    let from = this.at >= this.last ? 0 : this.at, way = 1, before = null;
    this.button.textContent = '\u275A\u275A Pause';
    if (calm()) {
      /* Whole steps of an eighth of the travel, no smooth motion. */
      const step = () => { from = from >= this.last ? 0 : Math.min(this.last, from + this.last / 8); this.move(Math.round(from)); };
      this.move(Math.round(from));
      this.timer = setInterval(step, 700);
      this.playing = 1;
      return;
    }
    const frame = now => {
      if (before !== null) {
        from += way * (now - before) / SWEEP_MS * this.last;
        if (from >= this.last || from <= 0) { from = clamp(from, 0, this.last); way = -way; }
        this.move(from);
      }
      before = now;
      this.playing = requestAnimationFrame(frame);
    };
    this.playing = requestAnimationFrame(frame);
  }
  stop() {
    if (!this.playing) return;
    cancelAnimationFrame(this.playing);
    clearInterval(this.timer);
    this.playing = 0;
    this.button.textContent = '\u25B6 Play';
  }
  pause() {
    this.stop();
    this.move(this.state);
    say(this.sentence(this.state));
  }

  /* Layers */
  hide(part, off) {
    this.film.rest();
    for (const sheaf of this.sheaves) if (sheaf.part === part) sheaf.g.classList.toggle('off', off);
    for (const label of this.labels || []) if (+label.dataset.part === part) label.style.display = off ? 'none' : '';
    if (this.labels) this.labelRows(this.pixel());
  }
  lifts() {
    const parts = this.data.parts, unit = Math.max(this.home.w, this.home.h) / 108, depth = SQUASH * this.home.h;
    const order = parts.map((p, i) => i).sort((a, b) => parts[a][1] - parts[b][1] || parts[a][2] - parts[b][2]);
    this.unit = unit; this.lift = []; this.top = 0;
    order.forEach((part, i) => {
      if (i) {
        const below = parts[order[i - 1]], small = parts[part][3] < this.home.h / 3;
        this.top += RISE * (below[2] - below[1]) + Math.max(9 * unit, (small ? 0.34 : 0.7) * depth);
      }
      this.lift[part] = this.top;
    });
    this.partOrder = order;
  }
  pull(share) {
    const was = this.apart;
    this.apart = share;
    if (!was !== !share) this.restack(share > 0);
    const { squash } = this.level();
    for (const sheaf of this.sheaves) {
      const height = RISE * (sheaf.z[1] - sheaf.z[0]) * share, { lift } = this.level(sheaf);
      if (share) sheaf.g.setAttribute('transform', `matrix(1 0 0 ${squash} 0 ${-lift})`);
      else sheaf.g.removeAttribute('transform');
      (sheaf.walls || []).forEach((wall, i, all) => wall.setAttribute('y', height * (all.length - i) / all.length / squash));
    }
    this.frameView();
  }
  /* How a sheaf is seen from aside, and by how much it is lifted. */
  level(sheaf) {
    const { apart } = this, squash = 1 - (1 - SQUASH) * apart;
    return { squash, lift: sheaf && apart ? apart * (this.lift[sheaf.part] + RISE * (sheaf.z[1] - this.data.parts[sheaf.part][1])) : 0 };
  }
  /* Labels beside their parts, from the lowest up, at least a line apart. */
  labelRows(pixel) {
    const { squash } = this.level();
    let last = Infinity;
    for (const label of this.labels || []) {
      if (label.style.display) continue;
      const y = squash * +label.dataset.middle - this.apart * this.lift[+label.dataset.part];
      last = Math.min(y, last - 18 * pixel);
      label.setAttribute('transform', `translate(0 ${last})`);
      $(label, 'text').setAttribute('font-size', 14 * pixel);
      $(label, 'text').setAttribute('y', 5 * pixel);
    }
  }
  restack(apart) {
    this.svg.classList.toggle('apart-on', apart);
    const scene = $(this.svg, '.scene');
    if (!apart) {
      for (const sheaf of this.sheaves) { scene.append(sheaf.g); for (const wall of sheaf.walls || []) wall.remove(); sheaf.walls = null; }
      scene.append(...$$(scene, '.clear'));
      for (const label of this.labels || []) label.remove();
      this.labels = null;
      return;
    }
    const rank = sheaf => this.partOrder.indexOf(sheaf.part);
    for (const sheaf of [...this.sheaves].sort((a, b) => rank(a) - rank(b) || a.z[0] - b.z[0])) {
      scene.append(sheaf.g);
      if (sheaf.g.classList.contains('leaves')) continue;
      const count = clamp(Math.ceil((sheaf.z[1] - sheaf.z[0]) / (0.3 * this.unit)), 1, 24);
      sheaf.walls = Array.from({ length: count }, () => draw('use', { href: `#${sheaf.inner.id}`, class: 'wall' }));
      sheaf.g.prepend(...sheaf.walls);
    }
    this.labels = this.partOrder.map(i => {
      const part = this.data.parts[i], x = this.home.x + this.home.w;
      const box = this.sheaves.find(one => one.part === i).inner.getBBox();
      const text = draw('text', { class: 'label', x: x + 2 * this.unit }, part[0]);
      const line = draw('path', { class: 'leader', 'vector-effect': 'non-scaling-stroke', d: `M${x - 3 * this.unit} 0h${4 * this.unit}` });
      const label = draw('g', { 'data-part': i, 'data-middle': box.y + box.height / 2, 'aria-hidden': 'true' }, line, text);
      label.style.display = this.sheaves.some(s => s.part === i && s.g.classList.contains('off')) ? 'none' : '';
      scene.append(label);
      return label;
    });
  }

  /* What of the plane is shown. */
  base() {
    const { x, y, w, h } = this.home, { squash } = this.level(), room = this.apart ? 30 * this.unit : 0;
    const top = squash * y - this.apart * (this.top + 3 * this.unit);
    return { x, y: top, w: w + room, h: squash * (y + h) - top };
  }
  frameView() {
    this.film.rest();
    const base = this.base(), centre = this.centre || [base.x + base.w / 2, base.y + base.h / 2];
    const w = base.w / this.zoom, h = base.h / this.zoom;
    this.svg.setAttribute('viewBox', `${centre[0] - w / 2} ${centre[1] - h / 2} ${w} ${h}`);
    const pixel = this.pixel();
    this.labelRows(pixel);
    for (const mark of $$(this.svg, '.marker')) mark.setAttribute('r', 16 * pixel);
    this.scaleBar(pixel);
  }
  /* Millimetres a pixel. */
  pixel() {
    const box = this.svg.viewBox.baseVal, size = this.svg.getBoundingClientRect();
    return Math.max(box.width / (size.width || 1), box.height / (size.height || 1));
  }
  scaleBar(pixel) {
    const bar = $(this.frame, '.scale'), round = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
    const [name, mm] = this.data.unit, length = round.find(one => one * mm / pixel >= 60) || 1000;
    const line = make('span');
    line.style.width = `${length * mm / pixel}px`;
    bar.replaceChildren(`${length} ${name}`, line);
    bar.hidden = this.apart > 0;
  }
  zoomTo(zoom, centre) {
    this.zoom = clamp(zoom, 1, MOST_ZOOM);
    this.centre = this.zoom === 1 ? null : centre || this.centre;
    this.frameView();
  }
  whole() { this.clear(); this.zoomTo(1); }
  drag() {
    let from = null;
    this.svg.addEventListener('pointerdown', event => { if (this.zoom > 1 && event.isPrimary) from = [event.clientX, event.clientY]; });
    addEventListener('pointermove', event => {
      if (!from) return;
      const pixel = this.pixel(), base = this.base(), centre = this.centre || [base.x + base.w / 2, base.y + base.h / 2];
      this.centre = [centre[0] - (event.clientX - from[0]) * pixel, centre[1] - (event.clientY - from[1]) * pixel];
      from = [event.clientX, event.clientY];
      this.frameView();
    }, { signal: alive.signal });
    addEventListener('pointerup', () => { from = null; }, { signal: alive.signal });
    this.svg.addEventListener('wheel', event => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      this.zoomTo(this.zoom * (event.deltaY < 0 ? 1.25 : 0.8));
    }, { passive: false });
    addEventListener('resize', () => this.frameView(), { signal: alive.signal });
  }

  /* Parts that light up, in the picture and in every list. */
  lights() {
    const over = event => {
      const use = event.target.closest('use[data-m]'), part = event.target.closest('[data-part]');
      this.light(part && this.root.contains(part) ? +part.dataset.part : this.pinned, use);
    };
    for (const place of [this.svg, $(this.root, '.layers'), $(this.root, '.parts')]) {
      place.addEventListener('pointerover', over);
      place.addEventListener('focusin', over);
      place.addEventListener('pointerleave', () => this.light(this.pinned));
      place.addEventListener('focusout', () => this.light(this.pinned));
    }
    for (const button of $$(this.root, 'button.name')) {
      const part = +button.closest('[data-part]').dataset.part;
      button.addEventListener('click', () => this.pin(this.pinned === part ? undefined : part));
    }
    this.svg.addEventListener('click', event => {
      const part = event.target.closest('[data-part]');
      if (part) this.pin(this.pinned === +part.dataset.part ? undefined : +part.dataset.part);
    });
    this.svg.addEventListener('keydown', event => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      const part = event.target.closest('[data-part]');
      if (part) { event.preventDefault(); this.pin(this.pinned === +part.dataset.part ? undefined : +part.dataset.part); }
    });
  }
  pin(part) {
    this.pinned = part;
    for (const button of $$(this.root, 'button.name'))
      button.setAttribute('aria-pressed', +button.closest('[data-part]').dataset.part === part);
    this.light(part);
    if (part !== undefined) say(`${this.describe(part)} is lit in picture and lists`);
  }
  describe(part) {
    const count = this.data.members.filter(member => member[1] === part).length;
    return `${count} \u00d7 ${this.data.parts[part][0]}`;
  }
  light(part, use) {
    this.film.rest();
    for (const element of $$(this.root, '[data-part]'))
      element.classList.toggle('lit', +element.dataset.part === part || this.kept.has(+element.dataset.part));
    if (part !== undefined) this.note.textContent = use ? this.data.members[+use.dataset.m][0] : this.describe(part);
    else this.note.textContent = this.finding;
  }
  clear() {
    for (const use of $$(this.svg, 'use.lit')) use.classList.remove('lit');
    for (const mark of $$(this.svg, '.marker')) mark.remove();
    this.kept.clear();
    this.finding = '';
    this.pin(undefined);
  }

  /* Findings */
  findings() {
    for (const row of $$(this.root, '.findings tr[data-where]')) {
      const step = this.step(row), target = this.target(row);
      if (!target && !step) continue;
      const name = $(row, 'th').lastChild.textContent.trim();
      const button = make('button', { type: 'button', class: 'show', 'aria-label': `Show ${name}: ${row.dataset.where}` }, 'Show');
      button.addEventListener('click', () => step ? (step.scrollIntoView({ block: 'center' }), step.focus()) : this.jump(target, row, button));
      $(row, '.see').append(button);
    }
  }
  /* The build step in which a row's finding is, if it is in one. */
  step(row) {
    const step = row.dataset.step && $$(this.root, '.steps li')[row.dataset.step - 1];
    if (step) step.tabIndex = -1;
    return step;
  }
  /* State, place and pieces of a row's finding; null when it has none of them. */
  target(row) {
    const list = name => (row.dataset[name] || '').split(' ').filter(Boolean).map(Number);
    const place = list('at'), members = list('members'), parts = list('parts');
    const target = { state: null, place: place.length ? place : null, members, parts };
    if (row.dataset.state) target.state = this.nearest(this.data.states, +row.dataset.state);
    else if (target.place) target.state = 0;
    return target.state !== null || target.place || members.length || parts.length ? target : null;
  }
  nearest(list, wanted) {
    let best = 0;
    list.forEach((value, i) => { if (Math.abs(value - wanted) < Math.abs(list[best] - wanted)) best = i; });
    return best;
  }
  jump(target, row, source) {
    this.stop();
    this.clear();
    if (this.apart) { this.apartSlider.value = 0; this.pull(0); }
    if (target.state !== null) { this.move(target.state); this.settle(); }
    for (const index of target.members)
      for (const use of $$(this.svg, `use[data-m="${index}"]`)) { use.classList.add('lit'); this.reveal(this.data.members[index][1]); }
    for (const part of target.parts) {
      this.kept.add(part);
      this.reveal(part);
    }
    if (target.place) {
      const [x, y] = target.place;
      this.zoomTo(4, [x, -y]);
      $(this.svg, '.scene').append(draw('circle', { class: 'marker', cx: x, cy: -y, r: 16 * this.pixel(), 'vector-effect': 'non-scaling-stroke' }));
    } else this.zoomTo(1);
    this.source = source;
    this.back.hidden = false;
    const text = $(row, 'th').lastChild.textContent.trim();
    this.finding = `${text}: ${row.dataset.where}`;
    this.light(undefined);
    say(`Showing ${this.finding}. ${this.sentence(this.state)}`);
    this.stage.scrollIntoView({ block: 'start' });
    this.slider.focus({ preventScroll: true });
  }
  reveal(part) {
    const box = $(this.root, `.layers [data-part="${part}"] input`);
    if (box && !box.checked) { box.checked = true; this.hide(part, false); }
  }

  /* Charts */
  plots() {
    const spread = index => { const own = this.table[index].filter(v => v !== null); return own.length ? Math.max(...own) - Math.min(...own) : 0; };
    const wanted = ['servo_deg', 'angle_in_deg', 'ring_deg'].map(name => this.columns.findIndex(c => c.name === name)).find(i => i >= 0 && spread(i) > 0);
    const across = wanted === undefined ? 0 : wanted, plots = $(this.root, '.plots'), flat = [];
    for (const index of this.keys) {
      if (index === across) continue;
      if (spread(index) < 1e-9) { flat.push(`${this.columns[index].label} ${this.value(index, 0)}`); continue; }
      const plot = new Plot(this, across, index);
      this.charts.push(plot);
      plots.append(plot.figure);
    }
    if (flat.length) plots.after(make('p', { class: 'quiet' }, `The same over the whole travel: ${flat.join(', ')}.`));
  }

  /* Build order: what is there so far, with what comes now standing out, and drops where something is glued. */
  steps() {
    $$(this.root, '.steps li').forEach((step, number) => {
      const list = name => step.dataset[name].split(' ').filter(Boolean).map(Number);
      const added = new Set(list('add')), here = new Set(list('here'));
      if (!here.size) return;
      const scene = draw('g');
      for (const sheaf of this.sheaves) this.stepSheaf(scene, sheaf, added, here, `${this.root.id}-s${number}`);
      for (const member of added) this.stepNumber(scene, member);
      const drops = list('glue');
      for (let i = 0; i < drops.length; i += 2) scene.append(draw('circle', { class: 'drop', cx: drops[i], cy: drops[i + 1], r: 1.1 * this.unit }));
      const names = [...new Set([...added].map(i => this.data.parts[this.data.members[i][1]][0]))];
      const title = names.length ? `Coming now, outlined: ${names.join(', ')}` : 'What is there so far';
      const svg = draw('svg', { class: 'step', role: 'img', 'aria-label': title }, scene);
      step.prepend(svg);
      const { x, y, width, height } = scene.getBBox(), room = 0.04 * Math.max(width, height);
      svg.setAttribute('viewBox', `${x - room} ${y - room} ${width + 2 * room} ${height + 2 * room}`);
    });
  }
  stepSheaf(scene, sheaf, added, here, id) {
    const old = draw('g', { class: `${sheaf.g.getAttribute('class')} old` }), fresh = draw('g', { class: `${sheaf.g.getAttribute('class')} new` });
    const copy = use => {
      const member = +use.dataset.m;
      return draw('use', { href: use.getAttribute('href'), transform: this.transform(this.data.members[member], 0), class: use.getAttribute('class') || '' });
    };
    const uses = $$(sheaf.inner, ':scope > use').filter(use => here.has(+use.dataset.m));
    for (const use of uses) (added.has(+use.dataset.m) ? fresh : old).append(copy(use));
    if (this.leaf && sheaf === this.leaf.sheaf && uses.length === this.leaf.count) {
      this.wedges(0);
      this.clips();
      this.leaf.wedges.forEach((wedge, i) => {
        if (!wedge.on) return;
        const clip = wedge.clip.cloneNode(true), g = draw('g', { 'clip-path': `url(#${id}w${i})` }, copy(uses[i]));
        clip.id = `${id}w${i}`;
        (added.has(+uses[i].dataset.m) ? fresh : old).append(clip, g);
      });
    }
    for (const g of [old, fresh]) if (g.childElementCount) scene.append(g);
  }
  /* The number of a leaf at its pivot, so that one sees which comes when. */
  stepNumber(scene, member) {
    const [name, , body] = this.data.members[member], number = /\d+$/.exec(name), own = this.data.bodies[body];
    if (!this.data.leaves.includes(member) || !number || Array.isArray(own[1])) return;
    scene.append(draw('text', { class: 'number', x: own[1], y: -own[2], 'font-size': 4 * this.unit, dy: 1.4 * this.unit }, number[0]));
  }

  /* What a newer page keeps. */
  memory() {
    return { at: this.at / this.last, apart: this.apart, off: $$(this.root, '.layers [data-part] input:not(:checked)').map(box => this.data.parts[+box.closest('[data-part]').dataset.part][0]) };
  }
  recall({ at, apart, off }) {
    this.move(Math.round(at * this.last));
    for (const box of $$(this.root, '.layers input[type=checkbox]')) {
      const part = +box.closest('[data-part]').dataset.part;
      if (off.includes(this.data.parts[part][0])) { box.checked = false; this.hide(part, true); }
    }
    this.apartSlider.value = Math.round(apart * 100);
    this.pull(apart);
  }
}

/*
 * The picture while the drive moves on: drawn on a canvas over it, from the same outlines at the same places, without
 * soft edges. What stands still is drawn once. A browser that paints an SVG without a graphics card goes through each
 * outline again for every patch of the picture that it touches, which takes several frames' time. The picture beneath
 * moves too, unseen but there for pointers, keyboards and readers, and is seen again as soon as the drive rests.
 */
class Film {
  constructor(mechanism) {
    this.mechanism = mechanism; this.before = -Infinity; this.outlines = new Map();
    this.canvas = make('canvas', { class: 'film', 'aria-hidden': 'true', hidden: '' });
    mechanism.svg.after(this.canvas);
  }
  run(s) {
    const now = performance.now(), on = now - this.before < REST_MS;
    this.before = now;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => { this.rest(); this.mechanism.settle(); }, REST_MS);
    /* A single step is seen as it is. */
    if (!on) return false;
    if (!this.layers) this.load();
    this.paint(s);
    return true;
  }
  rest() {
    if (!this.layers) return;
    this.layers = null;
    this.canvas.hidden = true;
    this.mechanism.svg.classList.remove('moving');
  }
  load() {
    const { canvas } = this, { svg, data, leaf, zoom } = this.mechanism;
    const box = svg.getBoundingClientRect(), view = svg.viewBox.baseVal, dots = Math.min(2, devicePixelRatio || 1);
    const scale = Math.min(box.width / view.width, box.height / view.height), k = scale * dots;
    /* No wider than the mechanism where that is seen whole. */
    const wide = zoom > 1 ? box.width : scale * view.width, high = zoom > 1 ? box.height : scale * view.height;
    canvas.width = Math.ceil(wide * dots); canvas.height = Math.ceil(high * dots);
    const left = (box.width - wide) / 2, top = (box.height - high) / 2;
    Object.assign(canvas.style, { left: `${left}px`, top: `${top}px`, width: `${canvas.width / dots}px`, height: `${canvas.height / dots}px` });
    this.k = k; this.dots = dots; this.context = canvas.getContext('2d');
    this.x = wide * dots / 2 - k * (view.x + view.width / 2); this.y = high * dots / 2 - k * (view.y + view.height / 2);
    this.layers = [];
    let still = null;
    for (const element of $(svg, '.scene').children) {
      if (getComputedStyle(element).display === 'none') continue;
      if (element.matches('[data-middle]')) continue;
      const sheaf = this.mechanism.sheaves.find(one => one.g === element), uses = sheaf ? $$(sheaf.inner, ':scope > use') : [element];
      const level = this.mechanism.level(sheaf), own = uses.map(use => ({ ...this.shape(use), ...level }));
      const moves = own.some(shape => shape.member && data.bodies[shape.member[2]].length), pins = element.matches('.pin');
      const shapes = [...this.walls(sheaf, own, !moves || pins), ...own];
      for (const shape of shapes) shape.exact = !moves && shape.squash < 1;
      /* A few round pins are drawn sooner than a whole sheet is laid over. */
      if (moves || pins && level.squash === 1) {
        still = null;
        this.layers.push({ shapes, leaf: leaf && sheaf === leaf.sheaf ? leaf : null });
        continue;
      }
      if (!still) {
        still = make('canvas', { width: canvas.width, height: canvas.height });
        this.layers.push({ still });
      }
      const context = still.getContext('2d');
      for (const shape of shapes) this.draw(context, shape, 0);
    }
    canvas.hidden = false;
    svg.classList.add('moving');
  }
  shape(element) {
    const { fill, stroke, fillOpacity, strokeWidth, strokeDasharray } = getComputedStyle(element), { dots, k } = this;
    const width = parseFloat(strokeWidth) * dots, dash = strokeDasharray === 'none' ? [] : strokeDasharray.split(',');
    return {
      member: element.dataset.m ? this.mechanism.data.members[+element.dataset.m] : null,
      paths: this.paths(element), fill, stroke, opacity: +fillOpacity,
      /* Lines of less than a dot are drawn many times faster than those of one. */
      width: (width > 0.9 && width < 1.1 ? 0.9 : width) / k, dash: dash.map(one => parseFloat(one) * dots / k),
    };
  }
  /* The walls of a part that is pulled apart; of a large one that moves every other one, without its line. */
  walls(sheaf, own, all) {
    const drawn = [];
    (sheaf && sheaf.walls || []).forEach((wall, i) => {
      if (!all && i % 2) return;
      const { fill, stroke, strokeWidth, fillOpacity } = getComputedStyle(wall), low = wall.getAttribute('y') * own[0].squash;
      const style = { fill, stroke: all ? stroke : 'none', opacity: +fillOpacity, width: parseFloat(strokeWidth) * this.dots / this.k };
      for (const shape of own) drawn.push({ ...shape, ...style, lift: shape.lift - low });
    });
    return drawn;
  }
  /* What an element draws, each outline read once; a circle has no other outline than its own. */
  paths(element) {
    const href = element.getAttribute('href');
    if (!href) {
      const path = new Path2D(element.getAttribute('d') || '');
      if (element.matches('circle')) path.arc(+element.getAttribute('cx'), +element.getAttribute('cy'), +element.getAttribute('r'), 0, 7);
      return [{ path, filled: true }];
    }
    if (!this.outlines.has(href)) {
      const root = $(this.mechanism.svg, href), all = root.matches('path') ? [root] : $$(root, 'path:not(.shade)');
      this.outlines.set(href, all.map(one => ({ path: new Path2D(one.getAttribute('d')), filled: !one.matches('.marks') })));
    }
    return this.outlines.get(href);
  }
  draw(context, shape, s) {
    const { k } = this, [angle, x, y] = shape.member ? this.mechanism.placed(shape.member, s) : [0, 0, 0];
    const c = k * Math.cos(angle * Math.PI / 180), n = k * Math.sin(angle * Math.PI / 180);
    const { squash, lift, exact } = shape, place = [c, -n * squash, n, c * squash, this.x + k * x, this.y - k * (y * squash + lift)];
    /* A line is as wide all round only where the outline alone is squashed. */
    if (exact) context.setTransform(k, 0, 0, k, 0, 0); else context.setTransform(...place);
    context.setLineDash(shape.dash);
    context.lineWidth = shape.width; context.lineJoin = 'round';
    context.fillStyle = shape.fill; context.strokeStyle = shape.stroke;
    for (const { path: own, filled } of shape.paths) {
      const path = exact ? new Path2D() : own;
      if (exact) path.addPath(own, new DOMMatrix(place.map(one => one / k)));
      if (filled && shape.fill !== 'none') {
        context.globalAlpha = shape.opacity;
        context.fill(path);
        context.globalAlpha = 1;
      }
      if (shape.stroke !== 'none') context.stroke(path);
    }
  }
  paint(s) {
    const { context, canvas } = this;
    context.setTransform(1, 0, 0, 1, 0, 0);
    if (!this.layers[0].still) context.clearRect(0, 0, canvas.width, canvas.height);
    for (const { still, shapes, leaf } of this.layers) {
      if (still) {
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.globalCompositeOperation = still === this.layers[0].still ? 'copy' : 'source-over';
        context.drawImage(still, 0, 0);
        context.globalCompositeOperation = 'source-over';
        continue;
      }
      const own = leaf ? shapes.slice(0, leaf.count) : shapes;
      for (const shape of own) this.draw(context, shape, s);
      if (leaf) this.round(leaf, own, s);
    }
  }
  /* The first leaves once more where they lie over the last ones, within one clip where it may be: clips are dear. */
  round(leaf, shapes, s) {
    const { context, k } = this, on = shapes.filter((shape, i) => leaf.wedges[i] && leaf.wedges[i].on);
    (leaf.one ? [on] : on.map(shape => [shape])).forEach((some, i) => {
      context.save();
      context.setTransform(k, 0, 0, k * some[0].squash, this.x, this.y - k * some[0].lift);
      context.clip(new Path2D(leaf.wedges[i].line));
      for (const shape of some) this.draw(context, shape, s);
      context.restore();
    });
  }
}

/* One column of the travel over another, as a line with axes; its cursor follows the drive and leads it when pressed. */
class Plot {
  constructor(mechanism, across, up) {
    const W = 320, H = 190, left = 44, right = 10, top = 12, bottom = 34;
    const { table, columns, root } = mechanism, finer = columns[up].finer;
    this.xs = table[across]; this.ys = table[up];
    const check = $(root, `.findings tr[data-check="${CSS.escape(columns[up].label.replace(/ /g, '-'))}"]`);
    const limit = check && +check.dataset.limit ? +check.dataset.limit : null;
    const values = this.ys.filter(v => v !== null);
    const [x0, x1] = [Math.min(...this.xs), Math.max(...this.xs)];
    let [y0, y1] = [Math.min(...values, limit ?? Infinity), Math.max(...values, limit ?? -Infinity)];
    if (y0 > 0 && y0 < 0.4 * y1) y0 = 0;
    const steps = ticks(y0, y1, 4);
    y0 = Math.min(y0, steps[0]); y1 = Math.max(y1, steps[steps.length - 1]);
    this.px = x => left + (x - x0) / (x1 - x0 || 1) * (W - left - right);
    this.py = y => H - bottom - (y - y0) / (y1 - y0 || 1) * (H - top - bottom);
    const svg = draw('svg', { viewBox: `0 0 ${W} ${H}`, role: 'img' });
    for (const y of steps) {
      svg.append(draw('line', { class: 'grid', x1: left, x2: W - right, y1: this.py(y), y2: this.py(y) }));
      svg.append(draw('text', { x: left - 5, y: this.py(y) + 4, 'text-anchor': 'end' }, tick(y, steps)));
    }
    const marks = ticks(x0, x1, 5);
    for (const x of marks) {
      if (x < x0 - 1e-9 || x > x1 + 1e-9) continue;
      svg.append(draw('line', { class: 'axis', x1: this.px(x), x2: this.px(x), y1: H - bottom, y2: H - bottom + 4 }));
      svg.append(draw('text', { x: this.px(x), y: H - bottom + 16, 'text-anchor': 'middle' }, tick(x, marks)));
    }
    svg.append(draw('line', { class: 'axis', x1: left, x2: W - right, y1: H - bottom, y2: H - bottom }));
    const named = c => `${c.label}${c.unit ? `, ${c.unit.trim()}` : ''}`;
    svg.append(draw('text', { x: W - right, y: H - 3, 'text-anchor': 'end' }, named(columns[across])));
    if (limit !== null) {
      svg.append(draw('line', { class: 'limit', x1: left, x2: W - right, y1: this.py(limit), y2: this.py(limit) }));
      svg.append(draw('text', { x: left + 4, y: this.py(limit) - 4 }, `limit ${shown(limit, '', finer)}`));
    }
    let d = '', pen = false;
    this.ys.forEach((y, i) => {
      if (y === null) { pen = false; return; }
      d += `${pen ? 'L' : 'M'}${this.px(this.xs[i]).toFixed(1)} ${this.py(y).toFixed(1)}`;
      pen = true;
    });
    this.line = draw('line', { class: 'cursor', y1: top, y2: H - bottom });
    this.dot = draw('circle', { class: 'dot', r: 4.5 });
    svg.append(draw('path', { class: 'curve', d }), this.line, this.dot);
    const told = value => shown(value, columns[up].unit, finer), first = told(this.ys[0]), last = told(this.ys[this.ys.length - 1]);
    const span = `least ${told(Math.min(...values))}, most ${told(Math.max(...values))}`;
    svg.setAttribute('aria-label', `${columns[up].label} against ${columns[across].label}: ${first} at the start, ${last} at the end, ${span}`);
    this.out = make('span');
    this.seen = true;
    this.name = `${columns[up].label} `;
    this.told = told;
    this.figure = make('figure', { class: 'plot' }, make('figcaption', {}, this.name, this.out), svg);
    const lead = event => {
      if (event.type === 'pointermove' && !event.buttons) return;
      const box = svg.getBoundingClientRect(), x = x0 + ((event.clientX - box.left) / box.width * W - left) / (W - left - right) * (x1 - x0);
      mechanism.stop();
      mechanism.move(mechanism.nearest(this.xs, x));
    };
    svg.addEventListener('pointerdown', lead);
    svg.addEventListener('pointermove', lead);
    new IntersectionObserver(all => { this.seen = all[all.length - 1].isIntersecting; if (this.seen) this.cursor(mechanism.state); }).observe(this.figure);
    this.cursor(0);
  }
  cursor(state) {
    if (state === this.at) return;
    this.at = state;
    const x = this.px(this.xs[state]), y = this.ys[state];
    this.line.setAttribute('x1', x); this.line.setAttribute('x2', x);
    this.dot.style.display = y === null ? 'none' : '';
    if (y !== null) { this.dot.setAttribute('cx', x); this.dot.setAttribute('cy', this.py(y)); }
    write(this.out, this.told(y));
  }
}
/* As many decimals as tell one step from the next. */
const tick = (value, steps) => value.toFixed(Math.max(0, -Math.floor(Math.log10(Math.abs(steps[1] - steps[0] || 1)) + 1e-6))).replace(/^-(?=0(\.0*)?$)/, '').replace('-', '\u2212');
/* Round numbers that span a range in about so many steps. */
function ticks(least, most, count) {
  const raw = (most - least || Math.abs(most) || 1) / count, power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map(one => one * power).find(one => one >= raw * 0.999);
  const all = [];
  for (let k = Math.floor(least / step + 1e-6); all.length < 12; k++) {
    all.push(k * step);
    if (k * step >= most - step * 1e-6) break;
  }
  return all;
}

function start() {
  const all = JSON.parse($(document, '#data').textContent);
  mechanisms = all.map((data, i) => new Mechanism(document.getElementById(`m${i}`), data));
}
/* A newer page in place of this one. */
function show(text) {
  const next = new DOMParser().parseFromString(text, 'text/html');
  const memory = new Map(mechanisms.map(one => [one.data.name, one.memory()]));
  for (const one of mechanisms) one.stop();
  alive.abort();
  alive = new AbortController();
  for (const query of ['#main', '#data', '#colours', 'header']) $(document, query).replaceWith(document.adoptNode($(next, query)));
  document.title = next.title;
  start();
  for (const one of mechanisms) if (memory.has(one.data.name)) one.recall(memory.get(one.data.name));
}
addEventListener('beforeprint', () => { for (const one of mechanisms) { one.film.rest(); one.settle(); } for (const fold of $$(document, 'details')) fold.open = true; });
window.ringleaf = { show, mechanisms: () => mechanisms };
start();
})();
