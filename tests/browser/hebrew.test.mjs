// A whole visit in Hebrew, read from right to left: the screens are mirrored, what is read from left to right everywhere is not.

import assert from "node:assert/strict";
import { test } from "node:test";
import { PLATE, wholeVisit } from "./whole-visit.mjs";

/** For each place where a text stands on the screen, whether its signs follow each other from left to right, line by line. */
const leftToRight = (text) => {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found = [];
  while (walker.nextNode()) {
    const { textContent } = walker.currentNode;
    for (let at = textContent.indexOf(text); at >= 0; at = textContent.indexOf(text, at + 1)) {
      const range = document.createRange();
      const places = [...text].flatMap((sign, index) => {
        if (sign === " ") return [];
        range.setStart(walker.currentNode, at + index);
        range.setEnd(walker.currentNode, at + index + 1);
        const { left, top, width } = range.getBoundingClientRect();
        return width === 0 ? [] : [{ left, top }];
      });
      found.push(
        places.every(
          (one, index) => index === 0 || one.top !== places[index - 1].top || one.left > places[index - 1].left,
        ),
      );
    }
  }
  return found;
};

/** What keeps its own order on every screen that shows it, and where it was seen. */
const KEPT = [PLATE, "81,200", "2,500"];
const seen = new Map();

wholeVisit("he", {
  point: ".",
  unread: "הרבה",
  note: "ברגים חדשים, 25 ניוטון־מטר",
  async further(name, phone) {
    for (const text of KEPT) {
      const orders = await phone.page.evaluate(leftToRight, text);
      assert.ok(orders.every(Boolean), `${name}: ${text} is torn apart`);
      if (orders.length > 0) seen.set(text, name);
    }
  },
});

test("a plate and numbers were seen, and kept their order", () => {
  assert.deepEqual([...seen.keys()].sort(), [...KEPT].sort());
});
