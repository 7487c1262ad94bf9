// Loaded with --import: writes the peak memory of the process, in kilobytes, to the named file.
import { writeFileSync } from 'node:fs';

process.on('exit', () => {
  writeFileSync(process.env.RONDURE_RSS_FILE, String(process.resourceUsage().maxRSS));
});
