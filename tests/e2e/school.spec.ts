import { expect, test as base } from '@playwright/test';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { prepareData } from '../../lib/commands/data-folder.mjs';
import { serve, tryPort } from '../../lib/commands/server.mjs';
import { testBuildFolder } from '../../lib/commands/test-product.mjs';
import { routes } from '../../lib/routes';

const test = base.extend<{ dataFolder: string }>({
  dataFolder: async ({}, use) => {
    const folder = mkdtempSync(path.join(tmpdir(), 'duskbench-school-'));
    await use(folder);
    rmSync(folder, { recursive: true, force: true });
  },
});

test('the first teacher of a school comes in with the token, once', async ({
  page,
  dataFolder,
}) => {
  const { firstTeacherToken, signIns } = await prepareData('school', dataFolder);
  expect(signIns, 'no demo accounts').toEqual([]);
  if (firstTeacherToken === null) throw new Error('no token was made');
  const found = await tryPort('127.0.0.1', 0);
  if (!found.free) throw new Error(found.code);
  const server = await serve({
    buildFolder: testBuildFolder,
    dataFolder,
    mode: 'school',
    host: '127.0.0.1',
    port: found.port,
  });

  await page.goto(`${server.address}${routes.firstTeacher()}`);
  await page.getByLabel('One-time token').fill(firstTeacherToken);
  await page.getByLabel('Your name').fill('M. Alder');
  await page.getByLabel('Email').fill('alder@school.example');
  await page.getByLabel('Password').fill('a long walk to the field');
  await page.getByRole('button', { name: 'Make the account' }).click();
  await expect(page).toHaveURL(`${server.address}${routes.teacher.desk()}`);

  await page.context().clearCookies();
  await page.goto(`${server.address}${routes.firstTeacher()}`);
  await expect(page.getByText('It has been made already')).toBeVisible();
  expect((await prepareData('school', dataFolder)).firstTeacherToken).toBeNull();
  await server.stop();
});

test('a school does not start on data that hold demo accounts', async ({ dataFolder }) => {
  await prepareData('demo', dataFolder);
  await expect(prepareData('school', dataFolder)).rejects.toThrow();
});
