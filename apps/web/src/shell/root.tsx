import { Outlet, useRouter } from "@tanstack/react-router";
import { RouterProvider } from "react-aria-components";

/** Around every page. */
export function Root() {
  const router = useRouter();
  return (
    <RouterProvider navigate={(to) => void router.navigate({ to })}>
      <Outlet />
    </RouterProvider>
  );
}
