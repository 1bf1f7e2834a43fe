"""Lets the exact solver go on from a plan, and tells of each better plan and each better bound meanwhile."""

from __future__ import annotations

from collections.abc import Iterator
from queue import SimpleQueue
from threading import Event, Thread

from planner.planning.season_plan.program import Program
from planner.planning.season_plan.solver import Found, solve_whole
from planner.planning.season_plan.values import Ints


def search_exactly(program: Program, *, start: Ints, seconds: float) -> Iterator[Found]:
    """Yield what the exact search finds from a first plan on, until it is proven or `seconds` are over.

    Close the generator to cancel; the solver then stops soon.
    """
    told: SimpleQueue[Found | BaseException | None] = SimpleQueue()
    cancel = Event()

    def tell(found: Found) -> None:
        # Bounds come by the thousand; one that nobody has looked at yet is enough.
        if found.lots is not None or told.empty():
            told.put(found)

    def run() -> None:
        try:
            last = solve_whole(program, start=start, seconds=seconds, tell=tell, stopped=cancel.is_set)
        except BaseException as error:  # noqa: BLE001 - handed on to whoever waits for the answer
            told.put(error)
        else:
            told.put(last)
            told.put(None)

    worker = Thread(target=run, daemon=True)
    worker.start()
    try:
        while (found := told.get()) is not None:
            if isinstance(found, BaseException):
                raise found
            yield found
    finally:
        cancel.set()
        worker.join()
