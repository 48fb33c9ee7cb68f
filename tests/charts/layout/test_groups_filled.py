"""Names written once for a group of rows or columns that nothing merges."""

from __future__ import annotations

from tests.charts.read_text import questions, table, values


def test_a_size_written_once_for_its_lengths_holds_for_all_of_them() -> None:
    reading = table(
        "Size|Length|Chest (cm)|Back (cm)\nS|Short|82-86|38\n|Long|82-86|42\n"
        "M|Short|87-91|39\n|Long|87-91|43"
    )
    found = values(reading)
    assert {key: ends for key, ends in found.items() if key.endswith("back_length")} == {
        "S Short back_length": 38,
        "S Long back_length": 42,
        "M Short back_length": 39,
        "M Long back_length": 43,
    }
    assert questions(reading) == []


def test_groups_that_are_not_alike_are_not_filled() -> None:
    reading = table(
        "Size|Length|Chest (cm)|Back (cm)\nS|Short|82-86|38\n|Long|82-86|42\n"
        "M|Short|87-91|39\n|Regular|87-91|41\n|Long|87-91|43"
    )
    assert questions(reading) != []


def test_a_measure_written_once_for_its_sizes_holds_for_all_of_them() -> None:
    reading = table(
        "Measurement|Size|from|to\nChest (cm)|S|82|86\n|M|87|91\nWaist (cm)|S|66|70\n|M|71|75"
    )
    assert values(reading) == {
        "S chest": (82, 86),
        "S waist": (66, 70),
        "M chest": (87, 91),
        "M waist": (71, 75),
    }
    assert questions(reading) == []


def test_bands_before_the_measures_of_sizes_that_run_across() -> None:
    for sizes in ("S|M", "36|38"):
        reading = table(
            f"||{sizes}\nWomen|Chest (cm)|82-86|87-91\n|Hip (cm)|90-94|95-99\n"
            "Men|Chest (cm)|92-96|97-101\n|Waist (cm)|78-82|83-87"
        )
        first, second = sizes.split("|")
        assert values(reading) == {
            f"women {first} chest": (82, 86),
            f"women {first} hip": (90, 94),
            f"women {second} chest": (87, 91),
            f"women {second} hip": (95, 99),
            f"men {first} chest": (92, 96),
            f"men {first} waist": (78, 82),
            f"men {second} chest": (97, 101),
            f"men {second} waist": (83, 87),
        }
        assert questions(reading) == []


def test_a_length_over_the_first_of_its_columns_holds_for_the_next_one() -> None:
    reading = table(
        f"Size|Short||Regular||Long|\n|{'|'.join(['Back (cm)|Height (cm)'] * 3)}\n"
        "S|38|150-160|41|160-170|44|170-180\nM|39|150-160|42|160-170|45|170-180"
    )
    found = values(reading)
    assert found["S Short height"] == (150, 160)
    assert found["S Regular height"] == (160, 170)
    assert found["M Long height"] == (170, 180)
    assert found["M Regular back_length"] == 42
    assert questions(reading) == []


def test_nor_is_it_given_to_all_lengths_where_the_groups_are_not_alike() -> None:
    reading = table(
        "Size|Short||Long|\n|Back (cm)|Height (cm)|Back (cm)|Chest (cm)\n"
        "S|38|150-160|44|82-86\nM|39|150-160|45|87-91"
    )
    assert "S Long height" not in values(reading)
    assert "S Short chest" not in values(reading)
