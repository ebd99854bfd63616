import { createRootRoute, createRoute, createRouter, lazyRouteComponent, redirect } from "@tanstack/react-router";
import { NoSuchPage } from "./nothing-here.js";
import { Root } from "./root.js";

const root = createRootRoute({ component: Root, notFoundComponent: NoSuchPage });

const home = createRoute({
  getParentRoute: () => root,
  path: "/",
  beforeLoad: () => {
    throw redirect({ to: "/cases", replace: true });
  },
});

const cases = createRoute({
  getParentRoute: () => root,
  path: "/cases",
  component: lazyRouteComponent(() => import("../cases/cases-page.js"), "CasesPage"),
});

const newCase = createRoute({
  getParentRoute: () => root,
  path: "/cases/new",
  component: lazyRouteComponent(() => import("../new-case/new-case-page.js"), "NewCasePage"),
});

const settings = createRoute({
  getParentRoute: () => root,
  path: "/settings",
  component: lazyRouteComponent(() => import("../settings/settings-page.js"), "SettingsPage"),
});

const pair = createRoute({
  getParentRoute: () => root,
  path: "/pair",
  component: lazyRouteComponent(() => import("../pairing/pair-page.js"), "PairPage"),
});

const caseStart = createRoute({
  getParentRoute: () => root,
  path: "/cases/$id",
  beforeLoad: ({ params }) => {
    throw redirect({ to: "/cases/$id/$step", params: { id: params.id, step: "describe" }, replace: true });
  },
});

/** One route for every step; which steps there are stands in the table of pages. */
const caseStep = createRoute({
  getParentRoute: () => root,
  path: "/cases/$id/$step",
  component: lazyRouteComponent(() => import("../case-pages/frame/case-step.js"), "CaseStep"),
});

export const router = createRouter({
  routeTree: root.addChildren([home, cases, newCase, settings, pair, caseStart, caseStep]),
  defaultPreload: "intent",
  scrollRestoration: true,
});

declare module "@tanstack/react-router" {
  interface Register {
    readonly router: typeof router;
  }
}
