// Opens the pages that '.ci/pages' made in Chromium and says what a reader would stumble over; ends with 1 where anything is wrong.
import { chromium } from "playwright-core";
import { createRequire } from "node:module";
import { execFileSync } from "node:child_process";
import { mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [folder, pictures] = process.argv.slice(2);
const axe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const looks = [
    { name: "wide", viewport: { width: 1200, height: 900 }, colorScheme: "light" },
    { name: "phone", viewport: { width: 390, height: 844 }, colorScheme: "light" },
    { name: "dark", viewport: { width: 1200, height: 900 }, colorScheme: "dark" },
];
const pages = [
    { name: "quillmere", file: "quillmere/report.html", card: true, sheets: 4 },
    { name: "dunmarrow", file: "dunmarrow/report.html", card: true, sheets: 6 },
    { name: "one-page", file: "quillmere/one-page.html", card: true, sheets: 1 },
    { name: "one-page-three", file: "dunmarrow/one-page.html", card: true, sheets: 1 },
    { name: "paper", file: "paper/paper.html", card: false, sheets: 15 },
];
const mostBytes = 150 * 1024;
const faults = [];
const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox"] });
for (const { name, file, card, sheets } of pages) {
    const path = join(folder, file);
    if (statSync(path).size > mostBytes) faults.push(`${name}: ${statSync(path).size} bytes, more than ${mostBytes}`);
    for (const look of looks) {
        const context = await browser.newContext({ deviceScaleFactor: 0.75, viewport: look.viewport, colorScheme: look.colorScheme, bypassCSP: true });
        const page = await context.newPage();
        page.on("request", asked => { if (!asked.url().startsWith("file:")) faults.push(`${name}, ${look.name}: asks for ${asked.url()}`); });
        await page.goto(pathToFileURL(path).href);
        if (pictures) {
            mkdirSync(pictures, { recursive: true });
            await page.screenshot({ path: join(pictures, `${name}-${look.name}.png`) });
        }
        const { bottom, wide } = await page.evaluate(() => ({
            bottom: document.querySelector(".answer")?.getBoundingClientRect().bottom ?? 0,
            wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        }));
        if (card && (bottom === 0 || bottom > look.viewport.height)) faults.push(`${name}, ${look.name}: the answer ends at ${Math.round(bottom)} of ${look.viewport.height} px`);
        if (wide > 0) faults.push(`${name}, ${look.name}: ${wide} px wider than the screen`);
        await page.addScriptTag({ path: axe });
        const { violations } = await page.evaluate(() => globalThis.axe.run());
        for (const { id, help, nodes } of violations) faults.push(`${name}, ${look.name}: ${id}: ${help} (${nodes.length}): ${nodes[0].target}`);
        await context.close();
    }
    const page = await browser.newPage();
    await page.goto(pathToFileURL(path).href);
    for (const format of ["A4", "Letter"]) {
        const pdf = join(folder, `${name}-${format}.pdf`);
        await page.pdf({ path: pdf, format, preferCSSPageSize: true });
        const printed = Number(/Pages:\s+(\d+)/.exec(execFileSync("pdfinfo", [pdf], { encoding: "utf8" }))[1]);
        if (printed > sheets) faults.push(`${name}, ${format}: ${printed} printed pages, more than ${sheets}`);
        if (pictures && card) execFileSync("pdftoppm", ["-r", "60", "-f", "1", "-l", "1", "-png", pdf, join(pictures, `${name}-${format}`)]);
    }
    await page.close();
}
await browser.close();
for (const fault of faults) console.error(fault);
if (faults.length === 0) console.log(`${pages.length} pages were looked at on ${looks.length} screens and two papers`);
process.exit(faults.length === 0 ? 0 : 1);
