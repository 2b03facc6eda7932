import { expect, test, vi } from 'vitest';
import { installApp, type UseNewer, type WorkerHost } from '../../src/page/install.ts';

class FakeWorker extends EventTarget {
  readonly postMessage = vi.fn();
}

function make(controller: object | null) {
  const registration = Object.assign(new EventTarget(), {
    waiting: null as FakeWorker | null,
    installing: null as FakeWorker | null,
  });
  const listeners: (() => void)[] = [];
  const workers: WorkerHost = {
    controller: controller as ServiceWorker | null,
    register: vi.fn(async () => registration as unknown as ServiceWorkerRegistration),
    addEventListener: (_, listener) => listeners.push(listener),
  };
  const offered: UseNewer[] = [];
  const reload = vi.fn();
  const arrive = () => {
    const worker = new FakeWorker();
    registration.installing = worker;
    registration.dispatchEvent(new Event('updatefound'));
    registration.installing = null;
    registration.waiting = worker;
    worker.dispatchEvent(new Event('statechange'));
    return worker;
  };
  return {
    registration,
    workers,
    offered,
    reload,
    arrive,
    takeOver: () => listeners.forEach((one) => void one()),
  };
}

const install = ({ workers, offered, reload }: ReturnType<typeof make>) =>
  installApp(workers, (use) => offered.push(use), reload);

test('the first visit installs without a word', async () => {
  const made = make(null);
  await install(made);
  made.arrive();
  expect(made.offered).toEqual([]);
  expect(made.workers.register).toHaveBeenCalledWith('./sw.js');
});

test('a newer version waits, is offered, and is put in when it is asked for', async () => {
  const made = make({});
  await install(made);
  const worker = made.arrive();
  expect(made.offered).toHaveLength(1);
  expect(worker.postMessage).not.toHaveBeenCalled();
  made.offered[0]!();
  expect(worker.postMessage).toHaveBeenCalledWith({ type: 'SKIP_WAITING' });
  expect(made.reload).not.toHaveBeenCalled();
  made.takeOver();
  expect(made.reload).toHaveBeenCalledOnce();
});

test('one that another window put in does not reload this one', async () => {
  const made = make({});
  await install(made);
  made.arrive();
  made.takeOver();
  expect(made.reload).not.toHaveBeenCalled();
});

test('one that has been waiting since the last visit is offered', async () => {
  const made = make({});
  made.registration.waiting = new FakeWorker();
  await install(made);
  expect(made.offered).toHaveLength(1);
});
