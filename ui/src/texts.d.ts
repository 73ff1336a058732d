// The modules that texts.plugin.ts makes of the Fluent files.
declare module 'virtual:texts' {
  /** The English texts. */
  export const english: string;
  /** Every language's own name by its tag, English among them. */
  export const names: Record<string, string>;
  /** How the other languages are fetched. */
  export const others: Record<string, () => Promise<{ default: string }>>;
}
