"""What is asked again of the same objects is answered from memory, and let go of."""

from __future__ import annotations

from charts import remembered as memory
from charts.importer import read_bytes
from charts.remembered import forget, remembered


class Asked:
    """A function that counts how often it really works."""

    def __init__(self) -> None:
        self.times = 0

    def __call__(self, one: list[int], more: int) -> int:
        self.times += 1
        return sum(one) + more


def test_the_same_objects_are_answered_once_and_equal_ones_anew() -> None:
    asked = Asked()
    known = remembered(asked.__call__)
    first = [1, 2]
    assert [known(first, 3), known(first, 3), known([1, 2], 3), known(first, 4)] == [6, 6, 6, 7]
    assert asked.times == 3


def test_what_is_let_go_of_is_worked_out_again() -> None:
    asked = Asked()
    known = remembered(asked.__call__)
    one = [1]
    known(one, 1)
    forget()
    assert known(one, 1) == 2
    assert asked.times == 2


def test_more_than_is_kept_is_still_answered_rightly() -> None:
    asked = Asked()
    known = remembered(asked.__call__)
    many = [[number] for number in range(memory._MOST + 10)]
    assert [known(one, 1) for one in many] == [number + 1 for number in range(len(many))]
    assert known(many[-1], 1) == len(many)
    assert asked.times == len(many)


def test_a_file_that_was_read_is_not_kept() -> None:
    read_bytes(b"Size,Chest (cm)\nS,84-88\nM,88-92\nL,92-96\n", "chart.csv")
    held = [clear.__self__ for clear in memory._forgetting]  # the memories of all functions
    assert held
    assert not any(held)
