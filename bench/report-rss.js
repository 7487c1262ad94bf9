// Loaded with --import: writes the peak memory of the process, in kilobytes, to the named file. Linux
// counts in `maxRSS` what the process that started this one held; its own peak stands in /proc.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const status = '/proc/self/status';
process.on('exit', () => {
  const own = existsSync(status) && /^VmHWM:\s+(\d+) kB/m.exec(readFileSync(status, 'utf8'))?.[1];
  writeFileSync(process.env.RONDURE_RSS_FILE, String(own || process.resourceUsage().maxRSS));
});
