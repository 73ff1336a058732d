// What a person with gloves, in glare or with large text meets, measured in the page as it is drawn: sizes of
// and gaps between targets, size and contrast of text and shapes, text that is cut off or pushes sideways.

/** Faults of the screen as it is drawn, a line each. */
export function faults(page, { largeText = false } = {}) {
  return page.evaluate(measure, largeText);
}

/** What `faults` runs in the page: everything it needs is inside it. */
export function measure(largeText) {
  const found = [];
  const root = document.documentElement;
  const named = (element) => {
    const id = element.closest("[data-testid]")?.dataset.testid;
    return `${element.tagName.toLowerCase()}${id ? `[${id}]` : ""} "${(element.textContent ?? "").trim().slice(0, 24)}"`;
  };
  const boxOf = (element) => element.getBoundingClientRect();
  const drawn = (element) => {
    const box = boxOf(element);
    return (
      box.width > 2 && box.height > 2 && element.checkVisibility({ visibilityProperty: true, opacityProperty: true })
    );
  };

  // Targets: 64 px for what a gloved hand goes on with (keys, fields, the head, places on the shaft), 44 px (WCAG
  // 2.5.5) for what lies beside the way.
  const targets = [
    ...document.querySelectorAll("button, a[href], select, textarea, summary, input, label:has(input[type=file])"),
  ].filter((one) => drawn(one) && !one.classList.contains("unseen"));
  const GLOVED =
    ".plate, .press, .stop, .station, header > button, input, select, textarea, .frame[data-testid=drawing]";
  const primary = targets.filter((one) => one.matches(GLOVED));
  for (const one of targets) {
    const { width, height } = boxOf(one);
    const least = primary.includes(one) ? 64 : 44;
    if (width < least - 0.5 || height < least - 0.5) {
      found.push(`target of ${Math.round(width)} by ${Math.round(height)}, not ${least}: ${named(one)}`);
    }
  }
  // With very large text STOP alone rests above the page.
  const resting = (one) =>
    [".dock, .answer, .foot", ".stop"].some((name) => {
      const rest = one.closest(name);
      return rest !== null && getComputedStyle(rest).position === "sticky";
    });
  for (const [at, one] of primary.entries()) {
    for (const other of primary.slice(at + 1)) {
      // What rests above the page covers what scrolls beneath it; that is no gap.
      if (resting(one) !== resting(other) || one.contains(other) || other.contains(one)) continue;
      const [a, b] = [boxOf(one), boxOf(other)];
      const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
      const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
      if (Math.max(across, down) < 7.5)
        found.push(`${Math.round(Math.max(across, down))} px between ${named(one)} and ${named(other)}`);
    }
  }

  // Colours, WCAG 2.2.
  const parse = (text) => {
    const parts = text.match(/[\d.]+/g)?.map(Number) ?? [0, 0, 0, 0];
    return { r: parts[0], g: parts[1], b: parts[2], a: parts[3] ?? 1 };
  };
  const luminance = ({ r, g, b }) => {
    const part = (value) => (value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
  };
  const contrast = (one, other) => {
    const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
    return (light + 0.05) / (dark + 0.05);
  };
  // Grounds under an element: the nearest painted one, and every colour of a pattern on the way.
  const grounds = (element) => {
    const all = [];
    for (let at = element; at; at = at.parentElement) {
      const style = getComputedStyle(at);
      if (style.backgroundImage.includes("gradient")) {
        all.push(
          ...(style.backgroundImage.match(/rgba?\([^)]*\)/g) ?? []).map(parse).filter((colour) => colour.a > 0.99),
        );
      }
      const ground = parse(style.backgroundColor);
      if (ground.a > 0.99) return [...all, ground];
    }
    return [...all, parse(getComputedStyle(document.body).backgroundColor)];
  };

  const stretch = (element) => {
    const way = element.getScreenCTM?.();
    return way ? Math.hypot(way.a, way.b) : 1;
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const shown = new Set();
  while (walker.nextNode()) {
    const element = walker.currentNode.parentElement;
    if (walker.currentNode.textContent.trim() === "" || !element || element.closest(".unseen, script, style, option"))
      continue;
    // Words drawn over a photo lie on a slip of their own (contrast.test.ts) and grow with the photo's zoom.
    if (element.closest('[data-testid="marks"]')) continue;
    if (drawn(element)) shown.add(element);
  }
  for (const element of shown) {
    const style = getComputedStyle(element);
    const inDrawing = element.closest("svg");
    const scale = inDrawing ? stretch(element) : 1;
    const size = Number.parseFloat(style.fontSize) * scale;
    if (size < 17.9) found.push(`text of ${size.toFixed(1)} px: ${named(element)}`);
    const large = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700);
    const ink = parse(inDrawing ? style.fill : style.color);
    const least = Math.min(...grounds(element).map((ground) => contrast(ink, ground)));
    if (least < (large ? 4.5 : 7)) found.push(`contrast ${least.toFixed(2)}: ${named(element)}`);
  }
  for (const one of targets) {
    const style = getComputedStyle(one);
    if (!one.matches(".plate, input, select, textarea") || Number.parseFloat(style.borderTopWidth) === 0) continue;
    const beside = grounds(one.parentElement);
    const own = parse(style.backgroundColor);
    const told = Math.min(
      ...beside.map((ground) =>
        Math.max(contrast(parse(style.borderTopColor), ground), own.a > 0.99 ? contrast(own, ground) : 1),
      ),
    );
    if (told < 3) found.push(`edge contrast ${told.toFixed(2)}: ${named(one)}`);
  }
  for (const line of document.querySelectorAll("svg.drawing [class*=d-], svg.symbol [class], svg.icon > *")) {
    const { stroke } = getComputedStyle(line);
    if (stroke === "none" || !drawn(line.closest("svg"))) continue;
    if (line.matches(".cut, .cut-dot")) continue;
    const least = Math.min(
      ...grounds(line.closest("svg").parentElement).map((ground) => contrast(parse(stroke), ground)),
    );
    if (least < 3)
      found.push(
        `line contrast ${least.toFixed(2)}: ${line.getAttribute("class")} in ${named(line.closest("button, section, div"))}`,
      );
  }

  // Nothing pushed sideways, nothing cut off.
  // A phone widens its window to what overflows, so the screen is the measure.
  const across = Math.min(innerWidth, screen.width);
  if (root.scrollWidth > across) {
    const wide = [...document.querySelectorAll("body *")].find(
      (one) =>
        boxOf(one).right > across + 1 && getComputedStyle(one).position !== "absolute" && !one.closest("svg, .unseen"),
    );
    found.push(`wider than the screen by ${root.scrollWidth - across} px${wide ? `: ${named(wide)}` : ""}`);
  }
  for (const element of document.querySelectorAll("body *:not(svg, svg *, .unseen, .unseen *)")) {
    const style = getComputedStyle(element);
    const hides = [style.overflowX, style.overflowY].some((way) => way === "hidden" || way === "clip");
    // A photo looked at closely is cut off by its stage, and moves in it.
    if (element.matches('[data-testid="photo-stage"]')) continue;
    if (!hides || !drawn(element) || (element.textContent ?? "").trim() === "") continue;
    if (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1)
      found.push(`cut off: ${named(element)}`);
  }
  if (!largeText) return found;
  // With very large text nothing may rest on top of most of the screen.
  for (const rest of document.querySelectorAll(".dock, .answer, .foot, .stop")) {
    if (getComputedStyle(rest).position === "sticky" && boxOf(rest).height > innerHeight * 0.6)
      found.push(`${rest.className} rests on ${Math.round(boxOf(rest).height)} px`);
  }
  return found;
}
