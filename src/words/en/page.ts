/** Words of `page`, the command that serves the worktable. */
export const page = {
  about: 'open the worktable: the whole job in your browser, on this machine alone',
  examples: `Examples:
  rondure page
  rondure page --port 8080
`,
  port: 'number at the end of the address',
  portDefault: (usual: number) => `${usual}, or a free one`,
  served: (address: string) =>
    `The worktable is open at ${address}\nPut that address into your browser. Ctrl-C ends it.\n`,
};
