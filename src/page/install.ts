/** The part of a service worker's container that is needed. */
export interface WorkerHost {
  readonly controller: ServiceWorker | null;
  register(address: string): Promise<ServiceWorkerRegistration>;
  addEventListener(type: 'controllerchange', listener: () => void): void;
}

/** Puts the newer version in and loads the page with it. */
export type UseNewer = () => void;

/**
 * Keeps the whole app on the device from the first visit on. A newer version is fetched beside the one
 * in use and waits there until it is asked for.
 *
 * @param offer called when a newer version is ready
 * @param reload loads the page again; called once the newer version has taken over, if it was asked for
 */
export async function installApp(
  workers: WorkerHost,
  offer: (use: UseNewer) => void,
  reload: () => void,
): Promise<void> {
  const registration = await workers.register('./sw.js');
  let isAsked = false;
  workers.addEventListener('controllerchange', () => {
    if (isAsked) reload();
  });

  function offerWaiting(): void {
    const { waiting } = registration;
    // Without a controller this is the first version, and there is nothing older in use.
    if (waiting === null || workers.controller === null) return;
    offer(() => {
      isAsked = true;
      waiting.postMessage({ type: 'SKIP_WAITING' });
    });
  }

  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offerWaiting);
  });
  offerWaiting();
}
