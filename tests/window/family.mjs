// The processes that a process started, and the sockets they hold, as Linux lists them in /proc.

import { readFile, readdir, readlink } from "node:fs/promises";

const INSPECTOR = "WEBKIT_INSPECTOR_SERVER";
const TABLES = ["tcp", "tcp6", "udp", "udp6"];
const OFTEN = 100;

/** Everything that a process started, and what that started in turn. */
export async function family(parent) {
  const numbers = (await readdir("/proc")).filter((name) => /^\d+$/.test(name));
  const all = (await Promise.all(numbers.map(born))).filter(Boolean);
  const under = (above) => all.filter((one) => one.parent === above).flatMap((one) => [one, ...under(one.pid)]);
  return under(parent);
}

/** Whether a process is no more; one that nobody has taken leave of yet writes nothing either. */
export async function ended(pid) {
  const line = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => "");
  return line === "" || /\) [ZX] /.test(line);
}

/** Looks again and again which sockets to a network a process's family holds; the driver's own do not count. */
export function watchSockets(parentNow) {
  const seen = new Set();
  let looking = false;
  const look = async () => {
    if (looking) return;
    looking = true;
    for (const { pid, name } of await family(parentNow())) {
      for (const socket of await sockets(pid).catch(() => [])) seen.add(`${name}: ${socket}`);
    }
    looking = false;
  };
  const clock = setInterval(look, OFTEN);
  return { found: () => [...seen], stop: () => clearInterval(clock) };
}

async function born(pid) {
  const line = await readFile(`/proc/${pid}/stat`, "utf8").catch(() => "");
  const [, name, parent] = /\((.*)\) \S (\d+)/.exec(line) ?? [];
  return name && { pid: Number(pid), name, parent: Number(parent) };
}

async function sockets(pid) {
  const names = await readdir(`/proc/${pid}/fd`);
  const links = await Promise.all(names.map((name) => readlink(`/proc/${pid}/fd/${name}`).catch(() => "")));
  const own = new Set(links.map((link) => /^socket:\[(\d+)\]$/.exec(link)?.[1]).filter(Boolean));
  const settings = (await readFile(`/proc/${pid}/environ`, "utf8")).split("\0");
  const driver = settings
    .find((one) => one.startsWith(`${INSPECTOR}=`))
    ?.split(":")
    .at(-1);
  // On its way in or out a process has no settings to read; what it does then is seen at the next look.
  if (!driver) return [];
  const found = [];
  for (const table of TABLES) {
    const lines = (await readFile(`/proc/${pid}/net/${table}`, "utf8")).trim().split("\n").slice(1);
    for (const [, here, there, , , , , , , inode] of lines.map((line) => line.trim().split(/\s+/))) {
      const ports = [here, there].map((end) => String(Number.parseInt(end.split(":")[1], 16)));
      if (own.has(inode) && !ports.includes(driver)) found.push(`${table} ${here} to ${there}`);
    }
  }
  return found;
}
