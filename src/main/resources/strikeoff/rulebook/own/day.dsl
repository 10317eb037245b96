# The day and its clock.
[condition][described.DayWorked]there is a day=DayWorked()
[condition][described.DayWorked]the day ends later than {clock}=DayWorked(endsAt() > {clock})
[condition][described.DayWorked]the day begins before {clock}=DayWorked(beginsAt() < {clock})
[condition][described.DayWorked]- that ends later than {clock}=endsAt() > {clock}
[condition][described.DayWorked]- with more than {number} lays=lays > {number}
[condition][described.StepTaken]there is a step=StepTaken()
[condition][described.StepTaken]there is a mixing=StepTaken(kind == "mix")
[condition][described.StepTaken]there is a printing=StepTaken(kind == "print")
[condition][described.StepTaken]there is a sewing=StepTaken(kind == "sew")
[condition][described.StepTaken]there is a screen washing=StepTaken(kind == "wash screen")
[condition][described.StepTaken]the cloth is fixed by {fix}=StepTaken(kind == {fix})
[condition][described.StepTaken]- of the kind {step}=kind == {step}
[condition][described.StepTaken]- of the paste {paste}=pastes contains {paste}
[condition][described.StepTaken]- with the screen {screen}=screens contains {screen}
[condition][described.StepTaken]- of the arrangement {arrangement}=arrangements contains {arrangement}
[condition][described.StepTaken]- that lasts longer than {time}=lasts > {time}
[condition][described.StepTaken]- that begins before {clock}=beginsAt < {clock}
[condition][described.StepTaken]- that begins later than {clock}=beginsAt > {clock}
[condition][described.StepTaken]- that ends later than {clock}=endsAt > {clock}
[condition][described.StepTaken]- on day {number}=day == {number}
[greatest][described.StepTaken]the longest printing=kind == "print", lasts
[condition][described.AirMoved]air is moved over the cloth=AirMoved()
[condition][described.AirMoved]- by {air}=by == {air}
[condition][described.InUse]something is in use=InUse()
[condition][described.InUse]a sink is busy for more than {share} of the time=InUse(kind == "sink", share.base() > {share})
[condition][described.InUse]a station is busy for more than {share} of the time=InUse(kind == "station", share.base() > {share})
[condition][described.InUse]somebody is busy for more than {share} of the time=InUse(kind == "person", share.base() > {share})
[condition][described.InUse]- of the kind {resource}=kind == {resource}
[condition][described.InUse]- called {name}=name == {name}
[condition][described.InUse]- for more than {share} of the time=share.base() > {share}
[condition][described.InUse]- for less than {share} of the time=share.base() < {share}
[condition][timeline.WetContact]a frame is laid on a wet film=WetContact()
[condition][timeline.WetContact]- of the same motif=sameMotif == true
[condition][timeline.WetContact]- too early by more than {time}=early.ordinary.base() > {time}
[condition][timeline.WetContact]- more likely than not=likely == true
[condition][timeline.TakenUpWet]the cloth is taken up wet=TakenUpWet()
[condition][timeline.TakenUpWet]the cloth goes wet into the bath=TakenUpWet(fixed == true)
[condition][timeline.TakenUpWet]- too early by more than {time}=early.ordinary.base() > {time}
[condition][timeline.IdleScreen]a screen stands idle with paste in it=IdleScreen()
[condition][timeline.IdleScreen]- for more than {time}=longest.base() > {time}
[condition][timeline.WaitingShare]people wait=WaitingShare()
[condition][timeline.WaitingShare]- for more than {share} of the time=share.base() > {share}
[condition][timeline.DayTooLong]a day runs past its hours=DayTooLong()
[condition][timeline.DayTooLong]- by more than {time}=over.base() > {time}
[condition][timeline.FilmsInRoom]a film never dries=FilmsInRoom(films > 0)
[condition][timeline.CannotStart]a step can never start=CannotStart()
[condition][timeline.NotInRoom]a step asks for equipment that is not there=NotInRoom(asked > 0)
[condition][timeline.NotInRoom]- called {resource}=equipment == {resource}
[condition][timeline.LongestFrame]a frame is the longest one of a step=LongestFrame()
[condition][timeline.LongestFrame]- with a side longer than {length}=side.base() > {length}
[condition][timeline.LongestFrame]- with fewer than {number} hands=hands < {number}
[condition][timeline.LongStep]a step takes longer than a day=LongStep()
[condition][timeline.DryingAir]the air is untried=DryingAir(films > 0, tried == false)
[condition][timeline.RunFigures]the run has its figures=RunFigures()
[condition][timeline.ClearedRun]waiting would clear the run=ClearedRun()
[condition][timeline.SetOnTable]a set lies on the table=SetOnTable()
[condition][timeline.SetOnTable]- longer than {length}=taken.base() > {length}
[condition][timeline.FramesOnBoards]a frame is laid over a gap between boards=FramesOnBoards(frames > 0)
[condition][timeline.ClothLies]the cloth lies on the table=ClothLies()
[condition][timeline.IdleHand]somebody of the crew does nothing=IdleHand()
[condition][timeline.IdleHand]- though she would save more than {time}=saves.base() > {time}
