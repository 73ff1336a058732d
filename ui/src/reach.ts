// Whether the end of what is to be read and pressed lies behind what rests at the foot of the screen.

/** Watches a mark at that end; `high` is how high that rests at the foot. Tells whenever it changes. */
export function reaching(high: () => number, tell: (covered: boolean) => void): (mark: HTMLElement) => () => void {
  return (mark) => {
    const root = document.documentElement;
    const resting = Math.round(high());
    // What takes the focus is scrolled clear of what rests at the foot.
    root.style.setProperty('scroll-padding-bottom', `${resting}px`);
    const watcher = new IntersectionObserver(
      ([seen]) => tell(seen?.isIntersecting === false && seen.boundingClientRect.top > 0),
      {
        rootMargin: `0px 0px -${resting}px 0px`,
      },
    );
    watcher.observe(mark);
    return () => {
      watcher.disconnect();
      root.style.removeProperty('scroll-padding-bottom');
    };
  };
}
