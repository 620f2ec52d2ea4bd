"""Work in other threads that ends when the user cancels, while the one that waits goes on asking for that."""

from __future__ import annotations

from concurrent.futures import Future, ThreadPoolExecutor, wait
from threading import Event
from types import TracebackType
from typing import Any, Callable, Optional, Type, TypeVar

from ..progress import Cancelled, Progress

_ASK = 0.5  # seconds between two questions whether to go on

T = TypeVar("T")


class Meanwhile:
    """Threads for work beside that of the caller: ``with Meanwhile(2) as beside``.

    Whatever ends the block early ends the work too, as soon as it reports its progress.
    """

    def __init__(self, threads: int) -> None:
        self._pool, self._stopped = ThreadPoolExecutor(threads), Event()

    def start(self, work: Callable[..., T], *given: Any) -> Future[T]:
        """Begin ``work`` of what is given and of a progress, its last argument."""
        return self._pool.submit(work, *given, self._go_on)

    def await_(self, started: Future[T], progress: Progress, fraction: float) -> T:
        """What came of it; ``progress`` is asked at ``fraction`` until then."""
        while not wait([started], _ASK).done:
            progress(fraction, "quality")
        return started.result()

    def _go_on(self, fraction: float, stage: str) -> None:
        if self._stopped.is_set():
            raise Cancelled

    def __enter__(self) -> Meanwhile:
        return self

    def __exit__(
        self, kind: Optional[Type[BaseException]], error: Optional[BaseException], trace: Optional[TracebackType]
    ) -> None:
        if error is not None:
            self._stopped.set()
        self._pool.shutdown(wait=True)
