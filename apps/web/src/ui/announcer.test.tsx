import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { announce, Announcer, hush } from './announcer';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.runAllTimers();
  vi.useRealTimers();
});

const page = () => renderToStaticMarkup(<Announcer />);
const wordsIn = (pattern: RegExp) => pattern.exec(page())?.[1]?.replace(/<[^>]+>/g, '') ?? '';
const statusSays = () => wordsIn(/role="status">(.*?)<\/div>/);
const alertSays = () => wordsIn(/role="alert">(.*?)<\/div>/);
const slipSays = () => wordsIn(/<p [^>]*>(.*?)<\/p>/);

test('of two that are said at once each is there for a second, the last for six', () => {
  announce('Sent: Cold room 37 °F');
  announce('Sent: Label');
  expect(statusSays()).toBe('Sent: Cold room 37 °F');
  vi.advanceTimersByTime(999);
  expect(statusSays()).toBe('Sent: Cold room 37 °F');
  vi.advanceTimersByTime(1);
  expect(statusSays()).toBe('Sent: Label');
  expect(slipSays()).toBe('Sent: Label');
  vi.advanceTimersByTime(5999);
  expect(statusSays()).toBe('Sent: Label');
  vi.advanceTimersByTime(1);
  expect(statusSays()).toBe('');
});

test('one that comes after the first was taken up does not wait', () => {
  announce('Sent: Label');
  vi.advanceTimersByTime(1500);
  announce('Sent: pH');
  expect(statusSays()).toBe('Sent: pH');
  vi.advanceTimersByTime(5000);
  expect(statusSays()).toBe('Sent: pH');
});

test('what is urgent waits for nothing, takes nothing away, and its slip lies on top', () => {
  announce('Sent: Core');
  announce('Limit missed: Core', { urgent: true });
  expect([statusSays(), alertSays(), slipSays()]).toEqual(['Sent: Core', 'Limit missed: Core', 'Limit missed: Core']);
});

test('of what stands on the display only the newest is said, and what waited is still said', () => {
  announce('7 °F', { unseen: true, about: 'display' });
  announce('Sent: Label');
  announce('71 °F', { unseen: true, about: 'display' });
  expect(statusSays()).toBe('71 °F');
  vi.advanceTimersByTime(1000);
  expect(statusSays()).toBe('Sent: Label');
  announce('71. °F', { unseen: true, about: 'display' });
  announce('71.8 °F', { unseen: true, about: 'display' });
  vi.advanceTimersByTime(1000);
  expect(statusSays()).toBe('71.8 °F');
});

test('hushed, all go on being said without a slip', () => {
  announce('Sent: Core');
  announce('Sent: Label');
  hush();
  expect([statusSays(), slipSays()]).toEqual(['Sent: Core', '']);
  vi.advanceTimersByTime(1000);
  expect([statusSays(), slipSays()]).toEqual(['Sent: Label', '']);
});
