"""The readings, in the order in which a fitter asks for them on the telephone."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from charts.day_words import day_words
from harmonizer.rider import BodyFigure, Measure, Reading, Rider, TakenBy
from harmonizer.settings import DEFAULTS, Settings
from ui.appearance import Type
from ui.controls.check_line import CheckLine
from ui.controls.field import FramedLine
from ui.controls.segments import Choice, Segments
from ui.controls.strokes import px
from ui.fitting_page.again_line import AgainLine
from ui.fitting_page.book_line import BookLine, BookState
from ui.fitting_page.doubts import Doubt, doubts_on
from ui.fitting_page.draft import ASKED, Draft, asked_definition, other_system, text_of
from ui.fitting_page.echo import figure_in
from ui.fitting_page.estimated import estimated
from ui.fitting_page.past import NOTHING_BEFORE, Past, last_reading
from ui.fitting_page.reading_field import ReadingField
from ui.fitting_page.tape_words import tape_words
from ui.fitting_page.typed import Typed
from ui.fitting_page.winter_line import WinterLine
from ui.words import Words


class ReadingsPanel(QScrollArea):
    """Holds one draft and keeps it as it is typed.

    Signals:
        typing(): something stands in a field that does not count yet.
        changed(): the draft is another one now.
        confirmed(): a doubt was answered; the readings are the same.
        keep_wanted(object): this Rider's readings are to be kept for next time.
        forget_wanted(str): nothing is to be kept of the rider of this name any more.
    """

    typing = Signal()
    changed = Signal()
    confirmed = Signal()
    keep_wanted = Signal(object)
    forget_wanted = Signal(str)

    def __init__(self, words: Words, type_: Type, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.draft = Draft()
        self.settings: Settings = DEFAULTS
        self.past = NOTHING_BEFORE
        self._words = words
        self._type = type_
        self.fields: dict[Measure, ReadingField] = {}
        self._build()
        self.show_draft(self.draft)

    def _build(self) -> None:
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        inner = QWidget(self)
        inner.setBackgroundRole(QPalette.ColorRole.Button)
        inner.setAutoFillBackground(True)
        column = QVBoxLayout(inner)
        column.setContentsMargins(px(self, 14), px(self, 12), px(self, 14), px(self, 10))
        column.setSpacing(px(self, 5))
        self._build_who(column)
        for measure in ASKED:
            column.addWidget(self._build_field(measure))
            if measure is Measure.BACK_LENGTH:
                column.addWidget(self._felt)
        self._build_how(column)
        column.addStretch(1)
        self.setWidget(inner)
        self.setFixedWidth(max(px(self, 272), inner.minimumSizeHint().width()))

    def _build_who(self, column: QVBoxLayout) -> None:
        self.name = FramedLine(self)
        self.name.edit.setFont(self._type.strong)
        self.name.edit.setPlaceholderText(self._words("field-name"))
        self.name.edit.setAccessibleName(self._words("field-name"))
        self.name.edit.textEdited.connect(self._name_edited)
        self.figure = Segments(
            [Choice(one.value, self._words(f"figure-{one.value}")) for one in BodyFigure]
        )
        self.figure.picked.connect(self._figure_picked)
        self._felt = CheckLine(self._words("c7-felt"), self)
        self._felt.setFont(self._type.small)
        self._felt.toggled.connect(self._felt_toggled)
        column.addWidget(self.name)
        column.addWidget(self.figure)
        self.book = BookLine(self._words.wording, self._type.small, self)
        self.book.keep.connect(self._keep)
        self.book.forget.connect(self._forget)
        column.addWidget(self.book)
        column.addSpacing(px(self, 4))

    def _build_field(self, measure: Measure) -> ReadingField:
        field = ReadingField(measure, self._words, self._type.small, self)
        field.committed.connect(self._field_committed)
        field.edited.connect(self.typing)
        field.taken_back.connect(self._tell_fields)
        field.taken_back.connect(self.changed)
        field.advance.connect(self._advance)
        field.confirmed.connect(self._field_confirmed)
        field.corrected.connect(self._field_corrected)
        field.taken_again.connect(self._taken_again)
        field.taker_wanted.connect(self._turn_taker)
        self.fields[measure] = field
        return field

    def _build_how(self, column: QVBoxLayout) -> None:
        self.taken_by = Segments(
            [
                Choice(
                    one.value, self._words(f"taken-{one.value}"), self._words(f"taker-{one.value}")
                )
                for one in TakenBy
            ],
            per_row=2,
        )
        self.taken_by.picked.connect(self._taker_picked)
        column.addSpacing(px(self, 3))
        column.addWidget(self._caption("caption-taken-by"))
        column.addWidget(self.taken_by)
        column.addSpacing(px(self, 3))
        column.addWidget(self._caption("caption-winter"))
        self.winter = WinterLine(self._words, self._type.small, self)
        self.winter.given.connect(self._winter_given)
        column.addWidget(self.winter)
        self.again = AgainLine(self._words.wording, self._type, self)
        column.addWidget(self.again)

    def _caption(self, code: str) -> QLabel:
        label = QLabel(self._words(code), self)
        label.setFont(self._type.small)
        label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        return label

    def take_settings(self, settings: Settings) -> None:
        """Ask by other figures of the shop from now on."""
        if settings != self.settings:
            self.settings = settings
            self._tell_fields()

    def take_past(self, past: Past) -> None:
        """Compare with what is kept of riders from now on."""
        if past != self.past:
            self.past = past
            self._tell_fields()

    def start(self) -> None:
        """Put the cursor where a call begins."""
        self.fields[Measure.CHEST].line.edit.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_draft(self, draft: Draft) -> None:
        """Show another rider's readings; tells nobody."""
        self.draft = draft
        given = draft.given
        self.name.edit.setText(given.name)
        self.figure.press((given.figure or BodyFigure.WOMAN).value)
        self.taken_by.press(given.taken_by.value)
        self.winter.show_value(given.winter_mm)
        self._felt.setChecked(draft.c7_felt)
        for measure, field in self.fields.items():
            reading = draft.reading(measure)
            field.show_value(text_of(reading) if reading else "", self._echo(measure))
        self._tell_fields()

    def count_all(self) -> None:
        """Let everything typed so far count."""
        for field in self.fields.values():
            field.count_now()

    def _echo(self, measure: Measure) -> str:
        """The reading in the other system of units."""
        reading = self.draft.reading(measure)
        if reading is None:
            return ""
        return figure_in(reading, other_system(reading), self._words)

    def _tell_fields(self) -> None:
        spoken = self.draft.spoken
        for field in self.fields.values():
            field.child = self.draft.is_child
            field.spoken = spoken
        back = self.draft.own_taker(Measure.BACK_LENGTH) or self.draft.given.taken_by
        helper = back is TakenBy.HELPER
        wording = self._words.wording
        before = self.past.before(self.draft)
        doubts = doubts_on(self.draft, wording, self.settings, self.past)
        expected = estimated(self.draft, wording, self.settings)
        tapes = tape_words(self.draft, wording, self.settings)
        for measure, field in self.fields.items():
            own = self.draft.own_taker(measure)
            field.ask_for(asked_definition(measure, self.settings))
            field.show_taker(self._words(f"taker-{own.value}") if own else "")
            field.show_last(last_reading(before, self.draft, measure, wording, self.settings))
            field.show_doubt(doubts.get(measure))
            field.show_estimate(expected.get(measure, ""))
            field.show_tape(tapes.get(measure, ""))
        self._felt.setVisible(helper and self.draft.reading(Measure.BACK_LENGTH) is not None)
        self.book.show_state(self._book_state(before, doubts))
        self.winter.say_what_it_adds(self.draft.given.winter_mm)

    def _book_state(self, before: Rider | None, doubts: Mapping[Measure, Doubt]) -> BookState:
        days = [one.on for one in before.readings if one.on is not None] if before else []
        return BookState(
            name=self.draft.given.name,
            day=day_words(max(days), self._words.wording) if days else "",
            kept=self.past.record(self.draft) is not None,
            can_keep=self.past.can_keep(self.draft),
            open_doubts=any(one.may_stay for one in doubts.values()),
        )

    def _changed(self, draft: Draft) -> None:
        self.draft = draft
        self._tell_fields()
        self.changed.emit()

    def _field_committed(self, typed: Typed) -> None:
        field = self.sender()
        if not isinstance(field, ReadingField):
            return
        self._changed(self.draft.typing(field.measure, typed, field.definition))
        field.show_echo(self._echo(field.measure))

    def _field_corrected(self, typed: Typed) -> None:
        """The other reading of a doubt: another figure, taken where the first one was."""
        field = self.sender()
        if isinstance(field, ReadingField):
            reading = self.draft.reading(field.measure)
            definition = reading.definition if reading is not None else field.definition
            self._changed(self.draft.typing(field.measure, typed, definition))
            field.show_echo(self._echo(field.measure))

    def _taken_again(self, readings: Sequence[Reading]) -> None:
        field = self.sender()
        draft = self.draft.taking_again(readings)
        if isinstance(field, ReadingField):
            reading = draft.reading(field.measure)
            self.draft = draft
            field.show_value(text_of(reading) if reading else "", self._echo(field.measure))
        self._changed(draft)

    def _keep(self) -> None:
        self.count_all()
        self.keep_wanted.emit(self.draft.rider())

    def _forget(self) -> None:
        self.forget_wanted.emit(self.draft.given.name)

    def _field_confirmed(self, key: str) -> None:
        """A doubt was answered: the figures stay, and the question goes."""
        self.draft = self.draft.confirming(key)
        self.confirmed.emit()
        self._tell_fields()

    def _advance(self) -> None:
        field = self.sender()
        places = list(self.fields.values())
        if field not in places:
            return
        following = places.index(field) + 1
        if following < len(places):
            places[following].line.edit.setFocus(Qt.FocusReason.TabFocusReason)
            places[following].line.edit.selectAll()
        else:
            self.taken_by.setFocus(Qt.FocusReason.TabFocusReason)

    def _turn_taker(self) -> None:
        field = self.sender()
        if isinstance(field, ReadingField):
            field.count_now()
            self._changed(self.draft.turning_taker(field.measure))

    def _name_edited(self, name: str) -> None:
        self._changed(self.draft.with_given(name=name))

    def _figure_picked(self, key: str) -> None:
        self._changed(self.draft.with_given(figure=BodyFigure(key)))

    def _taker_picked(self, key: str) -> None:
        self._changed(self.draft.with_given(taken_by=TakenBy(key)))

    def _felt_toggled(self, felt: bool) -> None:
        if felt != self.draft.c7_felt:
            self._changed(replace(self.draft, c7_felt=felt))

    def _winter_given(self, thick: Decimal) -> None:
        if thick != self.draft.given.winter_mm:
            self._changed(self.draft.with_given(winter_mm=thick))
