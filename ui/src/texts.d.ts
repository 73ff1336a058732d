// The modules that texts.plugin.ts makes of the Fluent files.
declare module 'virtual:texts' {
  /** How a part of a language is fetched. */
  export type Part = () => Promise<{ default: string }>;
  /** What the first screens say in English. */
  export const english: string;
  /** Every language's own name by its tag, English among them. */
  export const names: Record<string, string>;
  /** How what the first screens say in another language is fetched. */
  export const others: Record<string, Part>;
  /** How the rest of each language is fetched, English among them. */
  export const rests: Record<string, Part>;
}
