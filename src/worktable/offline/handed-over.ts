import { layFile } from '../picture-in/lay-file.js';

/** Files that the device hands to an installed page (File Handling of the web app manifest). */
interface LaunchQueue {
  setConsumer(take: (launch: { files: readonly FileSystemFileHandle[] }) => void): void;
}

/** Where the service worker lays what another app shared: the name of its cache, and of the file in it. */
const sharedCache = 'shared with rondure';
const sharedFile = './shared-file';

/** Takes what another app shared, or the device opens with this page, and lays it on the table. */
export function takeHandedOver(): void {
  const { launchQueue } = globalThis as unknown as { launchQueue?: LaunchQueue };
  launchQueue?.setConsumer(({ files }) => {
    void files[0]?.getFile().then(layFile);
  });
  if (new URLSearchParams(location.search).has('shared')) void takeShared();
}

async function takeShared(): Promise<void> {
  history.replaceState(undefined, '', './');
  const cache = await caches.open(sharedCache);
  const found = await cache.match(sharedFile);
  if (!found) return;
  await cache.delete(sharedFile);
  const name = decodeURIComponent(found.headers.get('file-name') ?? 'shared');
  const type = found.headers.get('content-type') ?? '';
  await layFile(new File([await found.blob()], name, { type }));
}
