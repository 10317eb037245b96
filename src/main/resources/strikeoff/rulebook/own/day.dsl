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
[condition][day.facts.WetContact]a frame is laid on a wet film=WetContact()
[condition][day.facts.WetContact]- of the same motif=sameMotif == true
[condition][day.facts.WetContact]- too early by more than {time}=early.ordinary.base() > {time}
[condition][day.facts.WetContact]- more likely than not=likely == true
[condition][day.facts.ClothTakenUp]the cloth is taken up wet=ClothTakenUp()
[condition][day.facts.ClothTakenUp]the cloth goes wet into the bath=ClothTakenUp(fixed == true)
[condition][day.facts.ClothTakenUp]- too early by more than {time}=early.ordinary.base() > {time}
[condition][day.facts.IdleScreen]a screen stands idle with paste in it=IdleScreen(slow == false)
[condition][day.facts.IdleScreen]a screen stands idle with paste in it on a slow day=IdleScreen(slow == true)
[condition][day.facts.IdleScreen]- for more than {time}=longest.base() > {time}
[condition][day.facts.LeftInBath]the cloth stays in its bath over a break=LeftInBath(longer.base() > 0)
[condition][day.facts.LeftInBath]- by more than {time}=longer.base() > {time}
[condition][day.facts.LeftWet]the cloth lies unrinsed overnight=LeftWet(rinsed == false, overnight == true)
[condition][day.facts.LeftWet]the cloth lies rinsed and unwashed=LeftWet(rinsed == true, lies.base() > 0)
[condition][day.facts.LeftWet]- lying for more than {time}=lies.base() > {time}
[condition][day.facts.WaitingShare]people wait=WaitingShare()
[condition][day.facts.WaitingShare]- for more than {share} of the time=share.base() > {share}
[condition][day.facts.DayEnd]a day runs past its hours=DayEnd(afterClosing == true)
[condition][day.facts.DayEnd]- by more than {time}=over.base() > {time}
[condition][day.facts.FilmsInRoom]a film never dries=FilmsInRoom(films > 0)
[condition][day.EndlessWait]a step can never start=EndlessWait()
[condition][day.facts.NotInRoom]a step asks for equipment that is not there=NotInRoom(asked > 0)
[condition][day.facts.NotInRoom]- called {resource}=equipment == {resource}
[condition][day.facts.DatesHeld]a run is to be done by a date=DatesHeld()
[condition][day.facts.DatesHeld]- ending more than {number} days after it=daysLate > {number}
[condition][day.facts.DatesHeld]- taking more than {number} days=days > {number}
[condition][day.facts.LongestFrame]a frame is the longest one of a step=LongestFrame()
[condition][day.facts.LongestFrame]- with a side longer than {length}=side.base() > {length}
[condition][day.facts.LongestFrame]- with fewer than {number} hands=hands < {number}
[condition][day.facts.StepLength]a step takes longer than a day=StepLength(over.base() > 0)
[condition][day.facts.DryingAir]the air is untried=DryingAir(films > 0, tried == false)
[condition][day.facts.RunFigures]the run has its figures=RunFigures()
[condition][day.facts.ClearedRun]waiting would clear the run=ClearedRun()
[condition][day.facts.SetOnTable]a set lies on the table=SetOnTable()
[condition][day.facts.SetOnTable]- longer than {length}=taken.base() > {length}
[condition][day.facts.FramesOnBoards]a frame is laid over a gap between boards=FramesOnBoards(frames > 0)
[condition][day.ClothLies]the cloth lies on the table=ClothLies()
[condition][day.facts.IdleHand]somebody of the crew does nothing=IdleHand()
[condition][day.facts.IdleHand]- though she would save more than {time}=saves.base() > {time}
