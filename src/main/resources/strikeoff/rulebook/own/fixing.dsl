# Fixing, finishing and cloth.
[condition][described.BathTaken]there is a bath=BathTaken()
[condition][described.BathTaken]the cloth is washed hotter than {temperature}=BathTaken(kind == "wash", temperature.base() > {temperature})
[condition][described.BathTaken]- of the kind {name}=kind == {name}
[condition][described.BathTaken]- hotter than {temperature}=temperature.base() > {temperature}
[condition][described.BathTaken]- cooler than {temperature}=temperature.base() < {temperature}
[condition][described.BathTaken]- longer than {time}=lasts.base() > {time}
[condition][described.BathTaken]- shorter than {time}=lasts.base() < {time}
[condition][bath.Soak]the cloth is soaked in soda=Soak()
[condition][bath.Soak]- of less than {concentration}=sodaGramsPerLitre.best() < {concentration}
[condition][bath.Soak]- of more than {concentration}=sodaGramsPerLitre.best() > {concentration}
[condition][bath.SodaInPaste]a paste with soda lies on silk or wool=SodaInPaste()
[condition][bath.SodaInPaste]- of more than {concentration}=sodaGramsPerLitre.best() > {concentration}
[condition][bath.FixTemperature]dye is fixed at a temperature=FixTemperature()
[condition][bath.FixTime]dye is fixed for a time=FixTime()
[condition][bath.Steaming]the cloth is steamed=Steaming()
[condition][bath.MissingAlkali]dye is fixed without alkali=MissingAlkali()
[condition][bath.UnfixedDye]dye is never fixed=UnfixedDye()
[condition][bath.TooWet]the cloth goes wet into the bath=TooWet()
[condition][bath.WashOff]the dye is washed off=WashOff()
[condition][bath.HeatSetting]paint is set by heat=HeatSetting()
[condition][bath.HeatSetting]- at less than {temperature}=temperature.base() < {temperature}
[condition][bath.HeatTime]paint is set for a time=HeatTime()
[condition][bath.UnsetPaint]paint is never set=UnsetPaint()
[condition][cloth.UnscouredCloth]dye is printed on unscoured cloth=UnscouredCloth()
[condition][cloth.FibreTake]a fibre takes up dye=FibreTake()
[condition][cloth.FibreTake]- less than {share} of it=takes.base() < {share}
[condition][bath.IronTime]paint is ironed for a time=IronTime()
